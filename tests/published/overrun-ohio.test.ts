/**
 * Source: Ohio Administrative Code, rule 109:4-3-13: the bill is not over 10 % above the estimate without approval.
 * Read as quoted word for word in public notes of 2026, not in the code itself; the amounts were worked by hand.
 * Information, not advice: the owner confirms what the law of the place says, and the ledger asks for new consent at
 * any change.
 */
import { type OverrunRule, overrunLimit } from '@bayledger/reckoning/money/overrun'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const rule: OverrunRule = { kind: 'percent', percentThousandths: 10_000, capCents: null }

published(
  {
    document: 'Ohio Administrative Code',
    section: '109:4-3-13',
    edition: 'as quoted in 2026',
    certainty: 'quoted',
  },
  () => {
    it.each([
      [8_000, 8_800],
      [10_000, 11_000],
      [15_100, 16_610],
      [30_000, 33_000],
      [50_000, 55_000],
      [90_000, 99_000],
    ])('of %i cents authorized, at most %i may be charged', (authorized, limit) => {
      expect(overrunLimit(rule, authorized)).toBe(limit)
    })
  },
)
