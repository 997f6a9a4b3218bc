import { thresholds } from '../thresholds.ts'
import type { SensorFacts } from './sensor-facts.ts'

type Heard = { readonly road: boolean; readonly sensor: Pick<SensorFacts, 'temperature'> }

/** Kelvin over the mean of the other road wheels; null with fewer than two of them to compare with. */
export const excessOver = <One extends Heard>(road: readonly One[], wheel: One): number | null => {
  const { temperature } = wheel.sensor
  if (!wheel.road || temperature === null) return null
  // Called for every wheel of everything that is supposed about the evidence: no list is made.
  let sum = 0
  let count = 0
  for (const other of road) {
    if (other === wheel || other.sensor.temperature === null) continue
    sum += other.sensor.temperature
    count += 1
  }
  return count < 2 ? null : temperature - sum / count
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
