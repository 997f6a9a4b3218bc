import type { Cents, EstimateLine } from '../estimate.ts'
import { shareCents, sumCents } from './cents.ts'

/** A fee that is a share of the labor, disclosed with its cap. */
export type SuppliesRule = { readonly percentThousandths: number; readonly capCents: Cents }

/**
 * The supplies fee of some lines that are decided together. Looking uses nothing up; once there is work, the share
 * counts the whole labor.
 *
 * @formula The share of the labor, at most what earlier lines of the order left of the cap, never under zero.
 * @units Cents; thousandths of a percent: 5,000 is 5 %.
 * @source Common practice, no source; share and cap are a shop's own, said beforehand.
 */
export const suppliesFeeCents = (
  lines: readonly EstimateLine[],
  rule: SuppliesRule,
  chargedBeforeCents: Cents,
): Cents => {
  const labor = lines.filter(({ taxClass }) => taxClass === 'labor')
  if (labor.every(({ kind }) => kind === 'look')) return 0
  const share = shareCents(sumCents(labor.map(({ amountCents }) => amountCents)), rule.percentThousandths)
  return Math.max(0, Math.min(share, rule.capCents - chargedBeforeCents))
}
