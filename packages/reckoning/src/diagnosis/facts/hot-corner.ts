import { thresholds } from '../thresholds.ts'
import type { SensorFacts } from './sensor-facts.ts'

type Heard = { readonly road: boolean; readonly sensor: Pick<SensorFacts, 'temperature'> }

/** Kelvin over the mean of the other road wheels; null with fewer than two of them to compare with. */
export const excessOver = <One extends Heard>(road: readonly One[], wheel: One): number | null => {
  const others = road.flatMap((other) => (other === wheel ? [] : (other.sensor.temperature ?? [])))
  if (!wheel.road || wheel.sensor.temperature === null || others.length < 2) return null
  return wheel.sensor.temperature - others.reduce((sum, one) => sum + one, 0) / others.length
}

/**
 * Its sensor is 30 °F or more over the mean of the others, whatever was said of the tires. Where that is so of most of
 * them, one sensor that reads cold is the odd one and no corner is hot.
 */
export const isHotCorner = <One extends Heard>(road: readonly One[], wheel: One): boolean =>
  isHot(road, wheel) &&
  2 * road.filter((one) => isHot(road, one)).length <=
    road.filter(({ sensor }) => sensor.temperature !== null).length

const isHot = <One extends Heard>(road: readonly One[], wheel: One): boolean =>
  (excessOver(road, wheel) ?? 0) >= thresholds.hotCornerExcess - 0.01
