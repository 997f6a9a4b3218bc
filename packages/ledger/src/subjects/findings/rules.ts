import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import { refuse } from '../../admit/refusal.ts'
import type { Rules } from '../../admit/rule.ts'
import { canonicalText, digestOf } from '../../digests.ts'
import { evidenceOf } from '../../questions/evidence-of.ts'
import { missingOnArrival } from '../../questions/gates.ts'
import type { findingKinds } from './kinds.ts'
import { areSameFacts } from './same-facts.ts'

export const findingRules: Rules<keyof typeof findingKinds> = {
  // The findings are computed again here, so that nobody can write findings that do not follow from the evidence.
  'diagnosis.issued': [
    (state, { payload }, facts) => {
      const evidence = evidenceOf(state, facts.history)
      const same =
        canonicalText(evidence) === canonicalText(payload.evidence) &&
        digestOf(evidence) === payload.evidenceDigest &&
        areSameFacts(payload.diagnosis, diagnose(evidence))
      return same ? null : refuse('DIAGNOSIS_DIFFERS', {})
    },
  ],
  'diagnosis.confirmed': [
    (state, { payload }) =>
      state.diagnosis?.written.entryId === payload.diagnosisId && !state.diagnosis.outdated
        ? null
        : refuse('DIAGNOSIS_NOT_CURRENT', {}),
    (state) => {
      const [first] = missingOnArrival(state)
      return first ? refuse('ARRIVAL_INCOMPLETE', { before: 'findings', reason: first }) : null
    },
  ],
  'stop.told': [
    (state, { payload }) => {
      const stops = new Set(
        (state.diagnosis?.diagnosis.findings ?? [])
          .filter(({ kind }) => kind === 'stop')
          .map(({ code }) => code as string),
      )
      const unknown = payload.codes.find((code) => !stops.has(code))
      return unknown ? refuse('STOP_NOT_FOUND', { finding: unknown, stops: true }) : null
    },
  ],
}
