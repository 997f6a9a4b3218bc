import { canonicalText } from '../digests.ts'
import type { BundleDecision, IssuedBundle, OrderState } from '../state.ts'
import { areAlternatives } from './alternatives.ts'
import { workBegan } from './work-began.ts'

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

/** The inspection alone: the customer agreed to it before anybody looked, so it is not asked about again. */
export const isLook = ({ works }: Pick<IssuedBundle, 'works'>): boolean =>
  works.length > 0 && works.every(({ kind }) => kind === 'look')

/** Bundles that wait for an answer. When one alternative is chosen, the others need no answer. */
export const unansweredBundles = (state: OrderState): readonly IssuedBundle[] => {
  const chosen = authorizedBundles(state)
  return newestBundles(state).filter(
    (bundle) =>
      !isLook(bundle) &&
      answerTo(state, bundle) === null &&
      !chosen.some((other) => areAlternatives(bundle, other)),
  )
}

/** How far the customer may still answer a bundle. */
export type Answerable =
  /** There is no answer yet, or it was put off: Yes, No or Not today. */
  | 'any'
  /** The customer said No, and may call back and say Yes. */
  | 'yes-only'
  /** The customer said Yes, and may take it back while no work on it was begun. */
  | 'no-only'
  | 'no'

/** How far a bundle of the newest revision may still be answered. */
export const answerable = (state: OrderState, bundle: IssuedBundle): Answerable => {
  if (isLook(bundle)) return 'no'
  switch (answerTo(state, bundle)?.answer) {
    case 'authorized':
      return workBegan(state, bundle) === null ? 'no-only' : 'no'
    case 'declined':
      return 'yes-only'
    default:
      return 'any'
  }
}

/**
 * Whether a bundle is an alternative to one that the customer wants and on which work was begun: a Yes to it would be a Yes to
 * both, so nobody is asked about it again.
 */
export const isReplaced = (state: OrderState, bundle: IssuedBundle): boolean =>
  authorizedBundles(state).some(
    (other) => areAlternatives(bundle, other) && answerable(state, other) === 'no',
  )
