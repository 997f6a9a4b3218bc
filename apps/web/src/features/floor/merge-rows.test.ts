import type { FloorRow } from '@bayledger/contract/orders'
import { expect, it } from 'vitest'
import { mergeRows } from './queries.ts'

const row = (orderId: string, openedAt: string, seq = 1) => ({ orderId, openedAt, seq }) as FloorRow

it('puts rows that were read again in their place, adds new ones and drops what is over', () => {
  const held = [row('a', '1'), row('b', '2'), row('c', '3')]
  expect(mergeRows(held, [row('b', '2', 9), row('d', '0')], ['b', 'c', 'd'])).toEqual([
    row('d', '0'),
    row('a', '1'),
    row('b', '2', 9),
  ])
})
