import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import type { HistoryEvidence } from '@bayledger/reckoning/evidence/evidence'
import { refuse } from '../../admit/refusal.ts'
import type { Rules } from '../../admit/rule.ts'
import { canonicalText, digestOf } from '../../digests.ts'
import { evidenceOf } from '../../questions/evidence-of.ts'
import { missingOnArrival } from '../../questions/gates.ts'
import type { PayloadOf } from '../../registry.ts'
import type { OrderState } from '../../state.ts'
import type { findingKinds } from './kinds.ts'
import { areSameFacts } from './same-facts.ts'

type Issued = PayloadOf<'diagnosis.issued'>

const isOn = (state: OrderState, payload: Issued, history: HistoryEvidence | null): boolean => {
  const evidence = evidenceOf(state, history)
  return (
    canonicalText(evidence) === canonicalText(payload.evidence) &&
    digestOf(evidence) === payload.evidenceDigest
  )
}

/**
 * Whether findings were issued on the evidence of this state, with the vehicle's history as they name it, and follow from
 * it. Rules that this program no longer has are not computed again.
 */
export const isIssuedOn = (state: OrderState, payload: Issued, by: 'these-rules' | 'older-rules'): boolean =>
  isOn(state, payload, payload.evidence.history ?? null) &&
  (by === 'older-rules' || areSameFacts(payload.diagnosis, diagnose(payload.evidence)))

export const findingRules: Rules<keyof typeof findingKinds> = {
  // The findings are computed again here, so that nobody can write findings that do not follow from the evidence.
  'diagnosis.issued': [
    (state, { payload }, facts) =>
      isOn(state, payload, facts.history) && areSameFacts(payload.diagnosis, diagnose(payload.evidence))
        ? null
        : refuse('DIAGNOSIS_DIFFERS', {}),
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
