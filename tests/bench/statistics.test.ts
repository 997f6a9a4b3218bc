import { describe, expect, it } from 'vitest'
import { quantile, timesOf } from './statistics.ts'

describe('a quantile', () => {
  it('is the time that so many runs did not exceed', () => {
    const times = [5, 1, 4, 2, 3, 6, 8, 7, 10, 9]
    expect([quantile(times, 0.5), quantile(times, 0.99), quantile(times, 0.1)]).toEqual([5, 10, 1])
  })

  it('does not exist without a run', () => {
    expect(() => quantile([], 0.5)).toThrow(RangeError)
  })
})

describe('the times of runs', () => {
  it('are as many as the runs, which go one after the other', async () => {
    const order: number[] = []
    expect(await timesOf(3, (index) => order.push(index))).toHaveLength(3)
    expect(order).toEqual([0, 1, 2])
  })
})
