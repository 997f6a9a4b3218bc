import type { OrderState } from '../state.ts'
import { newestBundles } from './answers.ts'
import { offersOf } from './offers-of.ts'
import { leavesBy, openTroubles } from './troubles.ts'

/**
 * Whether the confirmed findings offer work that no version of the estimate has put before the customer. A finding that
 * the customer refused on record needs none; where the findings offer nothing, there is nothing to repair.
 */
export const estimateIsMissing = (state: OrderState): boolean => {
  const { diagnosis, estimates, refusals } = state
  if (!diagnosis?.confirmed || diagnosis.outdated) return false
  const offering = diagnosis.diagnosis.findings.filter(({ offers }) => offers.length > 0)
  if (offering.every(({ code }) => refusals[code])) return false
  return estimates.at(-1)?.offers !== offersOf(diagnosis.diagnosis) || repairIsUnpriced(state)
}

/** The look inside has found a hole that may be repaired, and its price was not put before the customer. */
const repairIsUnpriced = (state: OrderState): boolean =>
  openTroubles(state).some(
    (trouble) =>
      trouble.what === 'hole' &&
      leavesBy(state, trouble) === null &&
      !newestBundles(state).some(({ works }) =>
        works.some((work) => work.kind === 'repair-puncture' && work.wheel === trouble.wheel),
      ),
  )
