import type { Wake } from '@bayledger/contract/live'
import { expect, it } from 'vitest'
import { gatherWakes, joinWakes } from './gather-wakes.ts'

const wake = (orders: [string, number][], rest: Partial<Wake> = {}): Wake => ({
  all: false,
  orders: orders.map(([orderId, seq]) => ({ orderId, seq })),
  tray: false,
  ...rest,
})

it('joins wake-ups: each order once, with its newest entry', () => {
  expect(
    joinWakes(
      wake([['a', 3]]),
      wake(
        [
          ['a', 2],
          ['b', 1],
        ],
        { tray: true },
      ),
    ),
  ).toEqual(
    wake(
      [
        ['a', 3],
        ['b', 1],
      ],
      { tray: true },
    ),
  )
  expect(joinWakes(wake([]), wake([], { all: true })).all).toBe(true)
})

it('reads what came within one moment once', async () => {
  const read: Wake[] = []
  const { add } = gatherWakes(
    async (what) => void read.push(what),
    () => 5,
  )
  await new Promise<void>((resolve) => {
    add(wake([['a', 1]]))
    add(wake([['b', 1]]))
    setTimeout(resolve, 30)
  })
  expect(read).toEqual([
    wake([
      ['a', 1],
      ['b', 1],
    ]),
  ])
})

it('reads nothing once it is stopped', async () => {
  const read: Wake[] = []
  const { add, stop } = gatherWakes(
    async (what) => void read.push(what),
    () => 5,
  )
  add(wake([['a', 1]]))
  stop()
  await new Promise((resolve) => setTimeout(resolve, 30))
  expect(read).toEqual([])
})
