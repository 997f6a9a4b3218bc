import * as z from 'zod/mini'
import { Cents } from '../estimate.ts'
import { shareAtMostCents } from './cents.ts'

const percentThousandths = z.int().check(z.gte(0), z.lte(100_000))
const amount = Cents.check(z.gte(0))

/**
 * How far a place's law lets a bill go over what the customer authorized, without asking again. Information, not
 * advice: the owner confirms what the law of the place says.
 *
 * @units Cents; thousandths of a percent: 10,000 is 10 %.
 * @source The local-law profile of a place, as its owner confirmed it.
 */
export const OverrunRule = z.discriminatedUnion('kind', [
  /** Every added cent needs consent. */
  z.strictObject({ kind: z.literal('none') }),
  z.strictObject({ kind: z.literal('percent'), percentThousandths, capCents: z.nullable(amount) }),
  z.strictObject({ kind: z.literal('amount'), cents: amount }),
  z.strictObject({
    kind: z.literal('greater-of'),
    percentThousandths,
    cents: amount,
    capCents: z.nullable(amount),
  }),
  z.strictObject({ kind: z.literal('lesser-of'), percentThousandths, cents: amount }),
])
export type OverrunRule = z.infer<typeof OverrunRule>

/**
 * The highest bill that a place's law allows without new consent. The ledger is stricter: whatever the law would let
 * pass, any change of an estimate is a new version that the customer answers again. So this says where the law would
 * be broken, and never that consent may be left out.
 *
 * @formula authorized + none, a percentage, an amount, or the greater or the lesser of both; at most the cap over it.
 * @units Cents; thousandths of a percent: 10,000 is 10 %. The percentage is cut to the cent.
 * @limits Never under what was authorized; nothing authorized allows nothing.
 * @source The laws of some states, quoted in tests/published/overrun-*.test.ts. Information, not advice.
 */
export const overrunLimit = (rule: OverrunRule, authorizedCents: Cents): Cents =>
  authorizedCents > 0 ? authorizedCents + toleranceOf(rule, authorizedCents) : authorizedCents

const toleranceOf = (rule: OverrunRule, authorizedCents: Cents): Cents => {
  const atMost = (cents: Cents, capCents: Cents | null) => Math.min(cents, capCents ?? cents)
  switch (rule.kind) {
    case 'none':
      return 0
    case 'amount':
      return rule.cents
    case 'percent':
      return atMost(shareAtMostCents(authorizedCents, rule.percentThousandths), rule.capCents)
    case 'greater-of': {
      const share = shareAtMostCents(authorizedCents, rule.percentThousandths)
      return atMost(Math.max(rule.cents, share), rule.capCents)
    }
    case 'lesser-of':
      return Math.min(rule.cents, shareAtMostCents(authorizedCents, rule.percentThousandths))
  }
}
