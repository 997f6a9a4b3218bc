import type { Work } from '@bayledger/reckoning/estimate'
import {
  judgePuncture,
  type PunctureVerdict,
  type RepairDoubt,
} from '@bayledger/reckoning/tire/puncture-verdict'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState, TireRecord } from '../state.ts'

/** What keeps a repair shut: what must be looked at first, `holes` being whether there are any, or what rules it out. */
export type RepairUnjudged = 'holes' | RepairDoubt

type Holes = NonNullable<TireRecord['punctures']>

/** The holes of a wheel's tire as the last look recorded them, from inside if somebody has looked there; `null`: nobody has. */
export const holesAt = (state: OrderState, wheel: WheelPosition): Holes | null =>
  state.work[wheel]?.holes?.punctures ?? state.arrival.tires[wheel]?.punctures ?? null

/**
 * Whether the holes of a wheel's tire may be repaired, from what was seen from outside and inside; `null`: nobody has
 * recorded yet whether it has any. A tire without a hole is repairable: its stem, bead or rim is.
 */
export const punctureVerdictAt = (state: OrderState, wheel: WheelPosition): PunctureVerdict | null => {
  const inside: TireRecord | null = state.work[wheel]?.inside ?? null
  const outside: TireRecord | null = state.arrival.tires[wheel] ?? null
  const punctures = holesAt(state, wheel)
  if (punctures === null) return null
  if (punctures.length === 0) return { verdict: 'repairable' }
  return judgePuncture({
    punctures: punctures.map(({ fromOthers, ...hole }) => ({
      ...hole,
      overlapsOther: fromOthers?.unitsOverlap ?? null,
    })),
    treadDepth32nds: inside?.treadDepth32nds ?? outside?.treadDepth32nds ?? null,
    isSoundInside: isSoundInside(inside?.inside ?? null),
  })
}

/** The nail itself, or an earlier repair that the hole does not overlap, is no damage. */
const isSoundInside = (inside: TireRecord['inside']): boolean | null =>
  inside === null ? null : inside === 'sound' || inside === 'foreign-body' || inside === 'earlier-repair'

/** Whether a work would close holes that may not be closed. */
export const isRuledOut = (state: OrderState, work: Work): boolean =>
  work.kind === 'repair-puncture' && punctureVerdictAt(state, work.wheel)?.verdict === 'not-repairable'
