import { type Appliers, recorded, writtenOf } from '../../fold/foldable.ts'
import { wheelsOfFinding } from '../../questions/wheels-of-finding.ts'
import type { findingKinds } from './kinds.ts'

export const applyFinding: Appliers<keyof typeof findingKinds> = {
  'diagnosis.issued': (state, entry) => ({
    ...state,
    diagnosis: recorded(
      {
        evidence: entry.payload.evidence,
        diagnosis: entry.payload.diagnosis,
        confirmed: null,
        outdated: false,
      },
      entry,
    ),
  }),
  'diagnosis.confirmed': (state, entry) =>
    state.diagnosis?.written.entryId === entry.payload.diagnosisId
      ? { ...state, diagnosis: { ...state.diagnosis, confirmed: recorded(entry.payload.verdict, entry) } }
      : state,
  'stop.told': (state, entry) => ({
    ...state,
    stopsTold: {
      ...state.stopsTold,
      ...Object.fromEntries(
        entry.payload.codes.map((code) => [
          code,
          { ...writtenOf(entry), wheels: wheelsOfFinding(state, code) },
        ]),
      ),
    },
  }),
}
