import { describe, expect, it } from 'vitest'
import { readyError } from './ready-error.ts'
import { type PastOrder, replayEstimates } from './replay-estimates.ts'

const always = () => [{ from: 0, until: Number.MAX_SAFE_INTEGER }]
const minute = 60_000
const day = 24 * 60 * minute

/** One order a day, of ten steps that each take `minutes`. */
const order = (at: number, minutes: number, change: Partial<PastOrder> = {}): PastOrder => ({
  endedAt: at * day + 8 * 60 * minute,
  steps: Array.from({ length: 10 }, () => ({ code: 'open-tire', seconds: minutes * 60 }) as const),
  authorized: { at: at * day, steps: { 'open-tire': 10 }, partAt: null },
  readyAt: at * day + 10 * minutes * minute,
  ...change,
})

describe('estimates of the past', () => {
  it('know only what was known then: our figure first, then what the place took', () => {
    const orders = Array.from({ length: 30 }, (_, at) => order(at + 1, 10))
    const judged = replayEstimates(orders.toReversed(), always)
    const off = judged.map(({ estimated, wasReady }) => (wasReady - estimated) / minute)
    // Our figure for breaking a bead is four minutes: the first ten orders end before it is learned anew.
    expect(off[0]).toBe(60)
    expect(off.at(-1)).toBe(0)
    expect(off.filter((one) => one === 0).length).toBeGreaterThanOrEqual(20)
    expect(readyError(judged).medianMinutes).toBe(0)
  })

  it('leave out an order without work and one that was ready before its last Yes', () => {
    const orders = [
      order(1, 10, { authorized: null }),
      order(2, 10, { readyAt: null }),
      order(3, 10, { readyAt: 3 * day - minute }),
    ]
    expect(replayEstimates(orders, always)).toEqual([])
  })

  it('wait for the part that was waited for then', () => {
    const partAt = day + 5 * 60 * minute
    const waits = order(1, 10, { authorized: { at: day, steps: { 'open-tire': 10 }, partAt } })
    expect(replayEstimates([waits], always)).toMatchObject([{ estimated: partAt + 40 * minute }])
  })
})
