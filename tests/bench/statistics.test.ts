import { describe, expect, it } from 'vitest'
import { summarize } from './statistics.ts'

describe('summing up times', () => {
  it('takes middle and slow end by nearest rank, whatever the order', () => {
    const times = Array.from({ length: 200 }, (_, index) => 200 - index)
    expect(summarize(times)).toMatchObject({ p50: 100, p99: 198 })
    expect(summarize([7])).toEqual({ p50: 7, p99: 7, perSecond: 1000 / 7 })
  })

  it('counts per second by the wall time where several ran side by side', () => {
    expect(summarize([100, 100, 100, 100]).perSecond).toBe(10)
    expect(summarize([100, 100, 100, 100], 200).perSecond).toBe(20)
  })

  it('leaves the times as they were and gives no figure for none', () => {
    const times = [3, 1, 2]
    summarize(times)
    expect(times).toEqual([3, 1, 2])
    expect(summarize([])).toEqual({ p50: Number.NaN, p99: Number.NaN, perSecond: Number.NaN })
  })
})
