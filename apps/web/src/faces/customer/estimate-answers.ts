import type { CustomerOrder } from '@bayledger/contract/customer-face'
import { areAlternatives } from '@bayledger/ledger/questions/alternatives'
import { lookCentsWith } from '@bayledger/ledger/questions/look-cents'
import type { Answer } from '@bayledger/reckoning/estimate'

export type Estimate = NonNullable<CustomerOrder['estimate']>
export type Offer = Estimate['bundles'][number]
export type Answers = Readonly<Record<string, Answer>>

/** What the customer wants to answer once more: what was put off, or a Yes that they take back. */
export type Again = 'put-off' | 'take-back' | null

/** The offers that this page asks about: those without an answer, and on request those that may be answered again. */
export const askedOf = ({ bundles }: Pick<Estimate, 'bundles'>, again: Again): readonly Offer[] =>
  bundles.filter(
    ({ answerable, mayTakeBack, answer }) =>
      (answerable && (answer === null || again === 'put-off')) || (mayTakeBack && again === 'take-back'),
  )

/** How many questions keep the answer from being sent. A Yes that stays needs none; some answer there must be. */
export const openQuestions = (asked: readonly Offer[], answers: Answers): number => {
  const open = asked.filter(({ mayTakeBack, bundleKey }) => !mayTakeBack && answers[bundleKey] === undefined)
  return open.length > 0 || Object.keys(answers).length > 0 ? open.length : 1
}

/** What was filled in, as far as it is still asked: an offer that was answered elsewhere meanwhile has that answer. */
export const stillAsked = (asked: readonly Offer[], answers: Answers): Answers =>
  Object.fromEntries(
    Object.entries(answers).filter(([key]) => asked.some(({ bundleKey }) => bundleKey === key)),
  )

/** What is to be done of what the customer wants. A Yes that cannot be taken back any more is one whose work was begun. */
export const workAhead = ({ bundles }: Pick<Estimate, 'bundles'>): 'none' | 'to-begin' | 'begun' => {
  const wanted = bundles.filter(({ answer, agreedBefore }) => answer === 'authorized' && !agreedBefore)
  if (!wanted.some(({ conditional }) => !conditional)) return 'none'
  return wanted.some(({ mayTakeBack }) => !mayTakeBack) ? 'begun' : 'to-begin'
}

/** What removes a danger is asked about before everything else. */
export const dangerFirst = (bundles: readonly Offer[]): readonly Offer[] =>
  bundles.toSorted((one, other) => Number(other.removesDanger) - Number(one.removesDanger))

/** A Yes to one of several alternatives is a No to the others: only one of them can be wanted. */
export const withAnswer = (
  { bundles }: Pick<Estimate, 'bundles'>,
  answers: Answers,
  bundleKey: string,
  answer: Answer,
): Answers => {
  const chosen = bundles.find((bundle) => bundle.bundleKey === bundleKey)
  const others = bundles.filter(
    (other) => chosen !== undefined && other.answerable && areAlternatives(chosen, other),
  )
  const declined =
    answer === 'authorized'
      ? Object.fromEntries(others.map((other) => [other.bundleKey, 'declined' as const]))
      : {}
  return { ...answers, ...declined, [bundleKey]: answer }
}

/** The keys of what is wanted, with the answers given on this page. */
export const wantedIn = ({ bundles }: Pick<Estimate, 'bundles'>, answers: Answers): ReadonlySet<string> =>
  new Set(
    bundles
      .filter(({ bundleKey, answer }) => (answers[bundleKey] ?? answer) === 'authorized')
      .map(({ bundleKey }) => bundleKey),
  )

/** What the inspection costs with these answers, and what everything costs, in cents with tax. */
export const sumsOf = (
  { bundles, look }: Pick<Estimate, 'bundles' | 'look'>,
  answers: Answers,
): { readonly lookCents: number; readonly totalCents: number } => {
  const wanted = wantedIn({ bundles }, answers)
  const work = bundles.filter(({ bundleKey, conditional }) => wanted.has(bundleKey) && !conditional)
  const lookCents = lookCentsWith(look, work.length > 0)
  return { lookCents, totalCents: work.reduce((sum, { totalCents }) => sum + totalCents, lookCents) }
}
