import type { Answer } from '@bayledger/reckoning/estimate'
import { type Appliers, recorded } from '../../fold/foldable.ts'
import { answerTo, newestBundles } from '../../questions/answers.ts'
import { offersOf } from '../../questions/offers-of.ts'
import { wheelsOfFinding } from '../../questions/wheels-of-finding.ts'
import type { OrderState, Written } from '../../state.ts'
import type { consentKinds } from './kinds.ts'

export const applyConsent: Appliers<keyof typeof consentKinds> = {
  'estimate.issued': (state, entry) => {
    const { scope, digest, diagnosisId } = entry.payload
    const diagnosis = state.diagnosis?.diagnosis
    const named = new Set(scope.bundles.flatMap(({ findings }) => findings))
    return {
      ...state,
      estimates: [
        ...state.estimates,
        recorded(
          {
            scope,
            digest,
            diagnosisId,
            offers: offersOf(diagnosis),
            findings: (diagnosis?.findings ?? []).filter(({ code }) => named.has(code)),
            shown: [],
          },
          entry,
        ),
      ],
    }
  },
  'estimate.shown': (state, entry) => ({
    ...state,
    estimates: state.estimates.map((issued) =>
      issued.scope.revision === entry.payload.revision
        ? { ...issued, shown: [...issued.shown, recorded(entry.payload, entry)] }
        : issued,
    ),
  }),
  'estimate.decided': (state, entry) => {
    const { revision, answers } = entry.payload
    const decided = answers.map(({ bundleKey, answer, deferredUntil, cautionsShown }) => [
      bundleKey,
      recorded(
        { revision, answer, deferredUntil, cautionsShown, takesBack: takenBack(state, bundleKey, answer) },
        entry,
      ),
    ])
    return {
      ...state,
      decisions: [...state.decisions, recorded(entry.payload, entry)],
      answers: { ...state.answers, ...Object.fromEntries(decided) },
    }
  },
  'refusal.recorded': (state, entry) => ({
    ...state,
    refusals: {
      ...state.refusals,
      ...Object.fromEntries(
        entry.payload.codes.map((code) => [
          code,
          recorded({ ...entry.payload, wheels: wheelsOfFinding(state, code) }, entry),
        ]),
      ),
    },
  }),
  'payment.noted': (state, entry) => ({
    ...state,
    payments: [...state.payments, recorded({ ...entry.payload, corrections: [] }, entry)],
  }),
  'payment.corrected': (state, entry) => {
    const { paymentId, money, method, why } = entry.payload
    return {
      ...state,
      payments: state.payments.map((payment) =>
        payment.written.entryId === paymentId
          ? {
              ...payment,
              money,
              method,
              corrections: [
                ...payment.corrections,
                recorded({ money: payment.money, method: payment.method, why }, entry),
              ],
            }
          : payment,
      ),
    }
  },
}

/** The Yes that an answer takes back. */
const takenBack = (state: OrderState, bundleKey: string, answer: Answer): Written | null => {
  const bundle = newestBundles(state).find((one) => one.bundleKey === bundleKey)
  const before = bundle && answerTo(state, bundle)
  return before?.answer === 'authorized' && answer !== 'authorized' ? before.written : null
}
