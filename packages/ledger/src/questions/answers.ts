import { canonicalText } from '../digests.ts'
import type { BundleDecision, IssuedBundle, OrderState } from '../state.ts'

/** The bundles of the newest revision of the estimate. */
export const newestBundles = (state: OrderState): readonly IssuedBundle[] =>
  state.estimates.at(-1)?.scope.bundles ?? []

/**
 * The customer's answer to a bundle of the newest revision. An answer is bound to what the customer read: an answer to an
 * earlier revision holds only while the bundle is the same to the cent; a changed bundle needs a new answer.
 */
export const answerTo = (state: OrderState, bundle: IssuedBundle): BundleDecision | null => {
  const decision = state.answers[bundle.bundleKey]
  if (!decision) return null
  if (decision.revision === state.estimates.at(-1)?.scope.revision) return decision
  const read = state.estimates
    .find(({ scope }) => scope.revision === decision.revision)
    ?.scope.bundles.find(({ bundleKey }) => bundleKey === bundle.bundleKey)
  return read && canonicalText(read) === canonicalText(bundle) ? decision : null
}

/** Bundles of the newest revision that the customer authorized. */
export const authorizedBundles = (state: OrderState): readonly IssuedBundle[] =>
  newestBundles(state).filter((bundle) => answerTo(state, bundle)?.answer === 'authorized')

/** Bundles that wait for an answer. When one alternative is chosen, the other needs no answer. */
export const unansweredBundles = (state: OrderState): readonly IssuedBundle[] => {
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
