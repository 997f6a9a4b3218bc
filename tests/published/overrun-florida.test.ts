/**
 * Source: Florida Statutes, section 559.909(3): not more than the estimate plus $10 or 10 %, whichever is greater,
 * and at most $50 over it, without authorization. Read as quoted word for word in public notes of 2026, not in the
 * code itself; the amounts were worked by hand. Information, not advice: the owner confirms what the law of the place
 * says, and the ledger requires new consent at any change.
 */
import { type OverrunRule, overrunLimit } from '@bayledger/reckoning/money/overrun'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const rule: OverrunRule = { kind: 'greater-of', percentThousandths: 10_000, cents: 1_000, capCents: 5_000 }

published(
  { document: 'Florida Statutes', section: '559.909(3)', edition: 'as quoted in 2026', certainty: 'quoted' },
  () => {
    it.each([
      [8_000, 9_000],
      [10_000, 11_000],
      [15_100, 16_610],
      [30_000, 33_000],
      [50_000, 55_000],
      [90_000, 95_000],
    ])('of %i cents authorized, at most %i may be charged', (authorized, limit) => {
      expect(overrunLimit(rule, authorized)).toBe(limit)
    })
  },
)
