import type { LightBehavior } from '../../evidence/evidence-schema.ts'
import { isHotCorner } from './hot-corner.ts'
import { keepsLampLit, warns } from './lamp-threshold.ts'
import type { WheelFacts } from './wheel-facts.ts'

export type LowTires = {
  /** At or under the warning point. */
  readonly firm: readonly WheelFacts[]
  /** Only while the light is solid and no tire is that low: within the hold of a lit lamp. */
  readonly likely: readonly WheelFacts[]
}

/** The road tires that can light the lamp by themselves. `doubtful`: wheels whose sensor's value is not believed. */
export const readLowTires = (
  road: readonly WheelFacts[],
  behavior: LightBehavior | null,
  doubtful: ReadonlySet<WheelFacts>,
): LowTires => {
  // The heat of a dragging brake is not the tire's: such a wheel is low only where it is so as read.
  const believed = road.filter((wheel) => !isHotCorner(road, wheel) || warns(wheel.judged, wheel))
  const firm = believed.filter((wheel) => warns(wheel.judged, wheel) || warns(wheel.cold, wheel))
  if (behavior !== 'solid' || firm.length > 0) return { firm, likely: [] }
  const isSeenLow = (wheel: WheelFacts) =>
    wheel.judged !== null && !doubtful.has(wheel) && keepsLampLit(wheel.seen, wheel)
  return {
    firm,
    likely: believed.filter(
      (wheel) => keepsLampLit(wheel.judged, wheel) || keepsLampLit(wheel.cold, wheel) || isSeenLow(wheel),
    ),
  }
}
