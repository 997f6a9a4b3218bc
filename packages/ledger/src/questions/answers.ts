import type { Bundle } from '@bayledger/reckoning/estimate'
import { canonicalText } from '../hash-chain.ts'
import type { BundleDecision, OrderState } from '../state.ts'

/** The bundles of the newest revision of the estimate. */
export const newestBundles = (state: OrderState): readonly Bundle[] =>
  state.estimates.at(-1)?.estimate.bundles ?? []

/**
 * The customer's answer to a bundle of the newest revision. An answer binds to what was read: one given to an earlier
 * revision holds only while the bundle is the same to the cent; a changed one asks anew.
 */
export const answerTo = (state: OrderState, bundle: Bundle): BundleDecision | null => {
  const decision = state.answers[bundle.bundleKey]
  if (!decision) return null
  if (decision.revision === state.estimates.at(-1)?.estimate.revision) return decision
  const read = state.estimates
    .find(({ estimate }) => estimate.revision === decision.revision)
    ?.estimate.bundles.find(({ bundleKey }) => bundleKey === bundle.bundleKey)
  return read && canonicalText(read) === canonicalText(bundle) ? decision : null
}

/** Bundles of the newest revision that the customer authorized. */
export const authorizedBundles = (state: OrderState): readonly Bundle[] =>
  newestBundles(state).filter((bundle) => answerTo(state, bundle)?.answer === 'authorized')

/** Bundles that wait for an answer; one whose alternative was chosen is settled with it. */
export const unansweredBundles = (state: OrderState): readonly Bundle[] => {
  const chosen = authorizedBundles(state)
  return newestBundles(state).filter(
    (bundle) =>
      answerTo(state, bundle) === null &&
      !chosen.some(
        ({ bundleKey, alternativeTo }) =>
          alternativeTo === bundle.bundleKey || bundle.alternativeTo === bundleKey,
      ),
  )
}
