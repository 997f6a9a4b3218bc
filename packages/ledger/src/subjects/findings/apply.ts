import { type Appliers, recorded, writtenOf } from '../../fold/foldable.ts'
import { wheelsOfFinding } from '../../questions/wheels-of-finding.ts'
import type { findingKinds } from './kinds.ts'

export const applyFinding: Appliers<keyof typeof findingKinds> = {
  'diagnosis.issued': (state, entry) => {
    const isLate = (entry.given.holds ?? []).some(({ code }) => code === 'heard-late')
    // Findings on what had changed already are outdated as they come, and replace none that are newer.
    if (isLate && state.diagnosis !== null) return state
    const { evidence, diagnosis } = entry.payload
    return {
      ...state,
      diagnosis: recorded({ evidence, diagnosis, confirmed: null, outdated: isLate }, entry),
    }
  },
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
