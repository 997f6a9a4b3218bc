import { calibrationLapse, usualInterval } from '@bayledger/reckoning/torque/calibration'
import { wheelNames } from '@bayledger/reckoning/wheels'
import type { Draft, Hold } from '../entry.ts'
import type { AdmitFacts } from './facts.ts'

/**
 * A torque round is a fact: the nuts were turned. When the register knows of the wrench what its holder could not,
 * the round stands and the road stays shut until a person settles it.
 */
export const holdsFor = (draft: Draft, facts: AdmitFacts): Hold[] => {
  if (draft.kind !== 'studs.torqued' && draft.kind !== 'torque.checked') return []
  const known = facts.wrenches.get(draft.payload.wrench.instrumentId)
  if (!known) return []
  const lapse = calibrationLapse(known, facts.now.slice(0, 10))
  const because =
    lapse === 'day'
      ? `was due for calibration on ${known.dueOn}`
      : known.quarantined
        ? 'is quarantined'
        : lapse === 'cycles'
          ? `has ${known.cycles} clicks and is due at ${usualInterval.cycles}`
          : null
  return because === null
    ? []
    : [
        {
          code: 'wrench-doubtful',
          gate: 'road',
          words: `The wrench ${draft.payload.wrench.code} ${because}. Withdraw this round with a second person, then torque the ${wheelNames[draft.payload.wheel]} wheel again with another wrench.`,
        },
      ]
}
