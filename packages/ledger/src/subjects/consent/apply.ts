import { type Appliers, recorded } from '../../fold/foldable.ts'
import { offersOf } from '../../questions/offers-of.ts'
import type { consentKinds } from './kinds.ts'

export const applyConsent: Appliers<keyof typeof consentKinds> = {
  'estimate.issued': (state, entry) => {
    const { estimate, digest, diagnosisId } = entry.payload
    return {
      ...state,
      estimates: [
        ...state.estimates,
        recorded(
          { estimate, digest, diagnosisId, offers: offersOf(state.diagnosis?.diagnosis), shown: [] },
          entry,
        ),
      ],
    }
  },
  'estimate.shown': (state, entry) => ({
    ...state,
    estimates: state.estimates.map((issued) =>
      issued.estimate.revision === entry.payload.revision
        ? { ...issued, shown: [...issued.shown, recorded(entry.payload, entry)] }
        : issued,
    ),
  }),
  'estimate.decided': (state, entry) => {
    const { revision, answers } = entry.payload
    const decided = answers.map(({ bundleKey, answer, deferredUntil, cautionShown }) => [
      bundleKey,
      recorded({ revision, answer, deferredUntil, cautionShown }, entry),
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
      ...Object.fromEntries(entry.payload.codes.map((code) => [code, recorded(entry.payload, entry)])),
    },
  }),
  'payment.noted': (state, entry) => ({ ...state, paidCents: state.paidCents + entry.payload.amountCents }),
}
