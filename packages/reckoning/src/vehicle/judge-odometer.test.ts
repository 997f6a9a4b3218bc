import { describe, expect, it } from 'vitest'
import { judgeOdometer } from './judge-odometer.ts'

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
    [mi(999_998), null, 'unlikely'],
    [mi(999_999), null, 'impossible'],
    [km(999_999), null, 'impossible'],
    [mi(1_500_000), null, 'impossible'],
    [mi(88_141), mi(88_141), 'plausible'],
    [mi(88_140.9), mi(88_141), 'backwards'],
    [mi(88_241), mi(88_141), 'plausible'],
    [mi(88_242), mi(88_141), 'unlikely'],
    [km(141_849), mi(88_141), 'plausible'],
    [km(141_840), mi(88_141), 'backwards'],
    [mi(88_141), km(141_849), 'plausible'],
  ] as const)('of %o after %o is %s', (read, before, verdict) => {
    expect(judgeOdometer(read, before)).toBe(verdict)
  })
})
