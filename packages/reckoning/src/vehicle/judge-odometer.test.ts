import { describe, expect, it } from 'vitest'
import { isConfirmable, judgeOdometer } from './judge-odometer.ts'

const mi = (value: number) => ({ value, unit: 'mi' as const })
const km = (value: number) => ({ value, unit: 'km' as const })

describe('an odometer reading', () => {
  it.each([
    [mi(0), null, 'plausible'],
    [mi(88_141), null, 'plausible'],
    [mi(500_000), null, 'plausible'],
    [mi(500_001), null, 'unlikely'],
    [km(804_000), null, 'plausible'],
    [km(805_000), null, 'unlikely'],
    [mi(999), null, 'plausible'],
    [mi(9_999), null, 'nines'],
    [mi(99_999), null, 'nines'],
    [mi(99_998), null, 'plausible'],
    [mi(999_998), null, 'unlikely'],
    [mi(999_999), null, 'impossible'],
    [km(999_999), null, 'impossible'],
    [mi(1_500_000), null, 'impossible'],
    [mi(88_141), mi(88_141), 'plausible'],
    [mi(88_140.9), mi(88_141), 'backwards'],
    [mi(88_241), mi(88_141), 'plausible'],
    [mi(88_242), mi(88_141), 'unlikely'],
    [mi(99_999), mi(99_990), 'nines'],
    [km(141_849), mi(88_141), 'plausible'],
    [km(141_840), mi(88_141), 'backwards'],
    [mi(88_141), km(141_849), 'plausible'],
  ] as const)('of %o after %o in this visit is %s', (read, before, verdict) => {
    expect(judgeOdometer(read, before && { distance: before, daysAgo: null })).toBe(verdict)
  })

  it.each([
    [mi(88_141), 0, 'plausible'],
    [mi(88_140), 400, 'lower'],
    [mi(88_241), 0, 'plausible'],
    [mi(88_242), 0, 'unlikely'],
    [mi(89_241), 1, 'plausible'],
    [mi(89_242), 1, 'unlikely'],
    [mi(118_241), 30, 'plausible'],
    [mi(118_242), 30, 'unlikely'],
    [km(141_840), 30, 'lower'],
  ] as const)('of %o is compared with 88,141 mi at a visit %i days ago: %s', (read, daysAgo, verdict) => {
    expect(judgeOdometer(read, { distance: mi(88_141), daysAgo })).toBe(verdict)
  })

  it('counts after a second look where it is unlikely, and never where it cannot be', () => {
    expect((['lower', 'unlikely', 'nines'] as const).every(isConfirmable)).toBe(true)
    expect((['plausible', 'impossible', 'backwards'] as const).some(isConfirmable)).toBe(false)
  })
})
