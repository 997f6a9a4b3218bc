import { calibrationLapse, usualInterval } from '@bayledger/reckoning/torque/calibration'
import type { Draft } from '../entry.ts'
import type { Hold, WrenchDoubt } from '../hold.ts'
import type { AdmitFacts, WrenchFacts } from './facts.ts'

/**
 * A torque round is a fact: the nuts were turned. When the register knows of the wrench what its holder could not,
 * the round stands and the road stays shut until a person settles it.
 */
export const holdsFor = (draft: Draft, facts: AdmitFacts): Hold[] => {
  if (draft.kind !== 'studs.torqued' && draft.kind !== 'torque.checked') return []
  const { wheel, wrench } = draft.payload
  const known = facts.wrenches.get(wrench.instrumentId)
  const values = known ? doubtOf(wrench.code, known, facts.now.slice(0, 10)) : null
  return values === null ? [] : [{ code: 'wrench-doubtful', gate: 'road', wheel, values }]
}

const doubtOf = (wrench: string, known: WrenchFacts, today: string): WrenchDoubt | null => {
  const lapse = calibrationLapse(known, today)
  if (lapse === 'day') return { why: 'day', wrench, dueOn: known.dueOn }
  if (known.quarantined) return { why: 'quarantined', wrench }
  return lapse === 'cycles'
    ? { why: 'cycles', wrench, cycles: known.cycles, dueAt: usualInterval.cycles }
    : null
}
