/**
 * Source: California Business and Professions Code, section 9884.9(a): no charge above the estimate without oral or
 * written consent obtained before the extra work; no percentage is tolerated. Read as quoted word for word in public
 * notes of 2026, not in the code itself; the amounts were worked by hand. Information, not advice: the owner confirms
 * what the law of the place says, and the ledger requires new consent at any change.
 */
import { type OverrunRule, overrunLimit } from '@bayledger/reckoning/money/overrun'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const rule: OverrunRule = { kind: 'none' }

published(
  {
    document: 'California Business and Professions Code',
    section: '9884.9(a)',
    edition: 'as quoted in 2026',
    certainty: 'quoted',
  },
  () => {
    it.each([
      [8_000, 8_000],
      [10_000, 10_000],
      [15_100, 15_100],
      [30_000, 30_000],
      [50_000, 50_000],
      [90_000, 90_000],
    ])('of %i cents authorized, at most %i may be charged', (authorized, limit) => {
      expect(overrunLimit(rule, authorized)).toBe(limit)
    })
  },
)
