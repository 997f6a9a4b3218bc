import { thresholds } from '../thresholds.ts'
import type { WheelFacts } from './wheel-facts.ts'

/** Kelvin over the mean of the other road wheels; null with fewer than two of them to compare with. */
export const excessOver = (road: readonly WheelFacts[], wheel: WheelFacts): number | null => {
  const others = road.flatMap((other) => (other === wheel ? [] : (other.sensor.temperature ?? [])))
  if (!wheel.road || wheel.sensor.temperature === null || others.length < 2) return null
  return wheel.sensor.temperature - others.reduce((sum, one) => sum + one, 0) / others.length
}

/**
 * Its sensor is 30 °F or more over the mean of the others, whatever was said of the tires. Where that is so of most of
 * them, one sensor that reads cold is the odd one and no corner is hot.
 */
export const isHotCorner = (road: readonly WheelFacts[], wheel: WheelFacts): boolean =>
  isHot(road, wheel) &&
  2 * road.filter((one) => isHot(road, one)).length <=
    road.filter(({ sensor }) => sensor.temperature !== null).length

const isHot = (road: readonly WheelFacts[], wheel: WheelFacts): boolean =>
  (excessOver(road, wheel) ?? 0) >= thresholds.hotCornerExcess - 0.01
