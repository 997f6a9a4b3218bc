import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { FoundKind, OrderState, Written } from '../state.ts'
import { holesAt, punctureVerdictAt } from './puncture.ts'

type HoleTrouble = {
  readonly wheel: WheelPosition
  readonly what: FoundKind
  readonly since: number
  readonly written: Written
}

/**
 * Holes that stop the work on their wheel: those that the look inside has judged, until they are repaired or the tire is
 * replaced, and those that can be seen from outside to be beyond repair.
 */
export const holeTroubles = (state: OrderState): HoleTrouble[] =>
  readingOrder.flatMap((wheel): HoleTrouble[] => {
    const inside = state.work[wheel]?.holes ?? null
    const written = inside?.written ?? state.arrival.tires[wheel]?.written
    const judged = (holesAt(state, wheel) ?? []).length === 0 ? null : punctureVerdictAt(state, wheel)
    if (written === undefined || judged === null) return []
    const found = { wheel, written, since: inside === null ? 0 : written.seq }
    if (judged.verdict === 'not-repairable') return [{ ...found, what: 'hole-beyond-repair' }]
    return judged.verdict === 'repairable' && inside !== null ? [{ ...found, what: 'hole' }] : []
  })
