import { above, atOrBelow } from '../../pressure/threshold.ts'
import type { GaugeKilopascals } from '../../units/measured.ts'
import { raisedBy } from '../../units/pressure-difference.ts'
import { thresholds } from '../thresholds.ts'
import type { WheelFacts } from './wheel-facts.ts'

/** A lamp that is lit stays lit at this pressure: it is at or under the warning point and its hold. */
export const keepsLampLit = (pressure: GaugeKilopascals | null, wheel: WheelFacts): boolean =>
  pressure !== null && wheel.warn !== null && atOrBelow(pressure, raisedBy(wheel.warn, thresholds.hold))

/** A lamp that is lit goes out at this pressure; false where either is not known. */
export const clearsLamp = (pressure: GaugeKilopascals | null, wheel: WheelFacts): boolean =>
  pressure !== null && wheel.warn !== null && above(pressure, raisedBy(wheel.warn, thresholds.hold))

/** At or under the warning point. */
export const warns = (pressure: GaugeKilopascals | null, wheel: WheelFacts): boolean =>
  pressure !== null && wheel.warn !== null && atOrBelow(pressure, wheel.warn)
