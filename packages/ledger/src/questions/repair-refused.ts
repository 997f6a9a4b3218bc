import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { type Refusal, refuse } from '../admit/refusal.ts'
import type { OrderState } from '../state.ts'
import { holesAt, punctureVerdictAt } from './puncture.ts'

/**
 * Why nothing of a wheel's tire may be plugged or patched: nobody has recorded what the hole is, or it may not be
 * repaired; `null` if it may.
 */
export const repairRefused = (state: OrderState, wheel: WheelPosition): Refusal | null => {
  const judged = punctureVerdictAt(state, wheel)
  if (judged === null) return refuse('REPAIR_NOT_JUDGED', { wheel, because: ['holes'] })
  if (judged.verdict === 'repairable') return null
  return judged.verdict === 'unknown'
    ? refuse('REPAIR_NOT_JUDGED', { wheel, because: judged.because })
    : refuse('PUNCTURE_NOT_REPAIRABLE', { wheel, because: judged.because })
}

/** Why the repair of a hole may not be offered yet: it is priced only after the look inside has given its verdict. */
export const repairNotOffered = (state: OrderState, wheel: WheelPosition): Refusal | null =>
  repairRefused(state, wheel) ??
  ((holesAt(state, wheel) ?? []).length > 0
    ? null
    : refuse('REPAIR_NOT_JUDGED', { wheel, because: ['holes'] }))
