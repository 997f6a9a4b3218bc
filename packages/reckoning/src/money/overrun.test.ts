import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { OverrunRule, overrunLimit } from './overrun.ts'

const tenPercent = { percentThousandths: 10_000 } as const

describe('the highest bill without new consent', () => {
  it.each([
    [{ kind: 'none' }, 10_000, 10_000],
    [{ kind: 'amount', cents: 1_000 }, 10_000, 11_000],
    [{ kind: 'percent', ...tenPercent, capCents: null }, 90_000, 99_000],
    [{ kind: 'percent', ...tenPercent, capCents: null }, 10_009, 11_009],
    [{ kind: 'percent', ...tenPercent, capCents: 5_000 }, 90_000, 95_000],
    [{ kind: 'greater-of', ...tenPercent, cents: 1_000, capCents: null }, 9_990, 10_990],
    [{ kind: 'greater-of', ...tenPercent, cents: 1_000, capCents: null }, 10_010, 11_011],
    [{ kind: 'greater-of', ...tenPercent, cents: 1_000, capCents: 5_000 }, 50_010, 55_010],
    [{ kind: 'greater-of', ...tenPercent, cents: 1_000, capCents: 500 }, 2_000, 2_500],
    [{ kind: 'lesser-of', ...tenPercent, cents: 5_000 }, 49_990, 54_989],
    [{ kind: 'lesser-of', ...tenPercent, cents: 5_000 }, 50_010, 55_010],
  ] as const)('by %o is for %i cents %i', (rule, authorized, limit) => {
    expect(overrunLimit(rule, authorized)).toBe(limit)
  })

  it('is nothing where nothing was authorized', () => {
    expect(overrunLimit({ kind: 'amount', cents: 1_000 }, 0)).toBe(0)
    expect(overrunLimit({ kind: 'amount', cents: 1_000 }, -500)).toBe(-500)
    expect(overrunLimit({ kind: 'amount', cents: 1_000 }, 1)).toBe(1_001)
  })

  const cents = fc.integer({ min: 0, max: 100_000 })
  const percentThousandths = fc.integer({ min: 0, max: 100_000 })
  const capCents = fc.option(cents)
  const rules: fc.Arbitrary<OverrunRule> = fc.oneof(
    fc.record({ kind: fc.constant('none' as const) }),
    fc.record({ kind: fc.constant('percent' as const), percentThousandths, capCents }),
    fc.record({ kind: fc.constant('amount' as const), cents }),
    fc.record({ kind: fc.constant('greater-of' as const), percentThousandths, cents, capCents }),
    fc.record({ kind: fc.constant('lesser-of' as const), percentThousandths, cents }),
  )

  it('is never under what was authorized, never over its cap, and grows with it', () => {
    fc.assert(
      fc.property(rules, cents, cents, (rule, authorized, more) => {
        expect(OverrunRule.safeParse(rule).success).toBe(true)
        const limit = overrunLimit(rule, authorized)
        expect(Number.isInteger(limit)).toBe(true)
        expect(limit).toBeGreaterThanOrEqual(authorized)
        if ('capCents' in rule && rule.capCents !== null)
          expect(limit - authorized).toBeLessThanOrEqual(rule.capCents)
        expect(overrunLimit(rule, authorized + more)).toBeGreaterThanOrEqual(limit)
      }),
      { seed: 20260112, numRuns: 2_000 },
    )
  })

  it.each([
    { kind: 'percent', percentThousandths: -1, capCents: null },
    { kind: 'percent', percentThousandths: 100_001, capCents: null },
    { kind: 'amount', cents: -1 },
    { kind: 'amount', cents: 0.5 },
    { kind: 'whatever' },
  ])('is not asked of the rule %o', (rule) => {
    expect(OverrunRule.safeParse(rule).success).toBe(false)
  })
})
