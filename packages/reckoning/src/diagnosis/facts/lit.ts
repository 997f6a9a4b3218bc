import { above, atOrBelow } from '../../pressure/threshold.ts'
import { thresholds } from '../thresholds.ts'
import type { WheelFacts } from './wheel-facts.ts'

/** A lamp that is lit stays lit at this pressure: it is at or under the warning point and its hold. */
export const keepsLampLit = (pressure: number | null, wheel: WheelFacts): boolean =>
  pressure !== null && wheel.warn !== null && atOrBelow(pressure, wheel.warn + thresholds.hold)

/** A lamp that is lit goes out at this pressure; false where either is not known. */
export const clearsLamp = (pressure: number | null, wheel: WheelFacts): boolean =>
  pressure !== null && wheel.warn !== null && above(pressure, wheel.warn + thresholds.hold)

/** At or under the warning point. */
export const warns = (pressure: number | null, wheel: WheelFacts): boolean =>
  pressure !== null && wheel.warn !== null && atOrBelow(pressure, wheel.warn)
