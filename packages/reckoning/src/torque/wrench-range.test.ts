import { describe, expect, it } from 'vitest'
import { isInSpan, spanForRound, usableSpan } from './wrench-range.ts'

const wrench = { rangeLow: 30, rangeHigh: 250, rangeUnit: 'lbf·ft' } as const

describe('a torque wrench', () => {
  it('is good from a fifth of its highest figure, or from where its scale begins', () => {
    expect(usableSpan(wrench)).toEqual({ low: 50, high: 250, unit: 'lbf·ft' })
    expect(usableSpan({ ...wrench, rangeLow: 60 }).low).toBe(60)
  })

  it('is good for the first round on all of its scale, and for the rounds that count on its tested span', () => {
    const fits = (value: number, round: 'half' | 'full') =>
      isInSpan({ value, unit: 'lbf·ft' }, spanForRound(round, wrench))
    expect([fits(30, 'half'), fits(29, 'half'), fits(251, 'half')]).toEqual([true, false, false])
    expect([fits(49, 'full'), fits(50, 'full')]).toEqual([false, true])
  })

  it.each([
    [{ value: 100, unit: 'lbf·ft' }, true],
    [{ value: 50, unit: 'lbf·ft' }, true],
    [{ value: 49.9, unit: 'lbf·ft' }, false],
    [{ value: 250, unit: 'lbf·ft' }, true],
    [{ value: 160, unit: 'N·m' }, true],
    [{ value: 60, unit: 'N·m' }, false],
    [{ value: 340, unit: 'N·m' }, false],
    [{ value: 62, unit: 'lbf·in' }, false],
  ] as const)('of 30 to 250 lbf·ft set to %o: %s', (figure, fits) => {
    expect(isInSpan(figure, usableSpan(wrench))).toBe(fits)
  })
})
