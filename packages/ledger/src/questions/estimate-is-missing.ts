import type { OrderState } from '../state.ts'
import { offersOf } from './offers-of.ts'

/**
 * Whether the confirmed findings offer work that no version of the estimate has put before the customer. A finding that
 * the customer refused on record needs none; where the findings offer nothing, there is nothing to repair.
 */
export const estimateIsMissing = ({ diagnosis, estimates, refusals }: OrderState): boolean => {
  if (!diagnosis?.confirmed || diagnosis.outdated) return false
  const offering = diagnosis.diagnosis.findings.filter(({ offers }) => offers.length > 0)
  if (offering.every(({ code }) => refusals[code])) return false
  return estimates.at(-1)?.offers !== offersOf(diagnosis.diagnosis)
}
