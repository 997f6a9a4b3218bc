import { atOrAbove } from '../../pressure/threshold.ts'
import { kilopascalsOver, magnitude } from '../../units/pressure-difference.ts'
import { thresholds } from '../thresholds.ts'
import type { EventFacts } from './event-facts.ts'
import { doesNotFollow, isAsleep } from './sensor-doubts.ts'
import type { WheelFacts } from './wheel-facts.ts'

/**
 * Road wheels whose typed value is far from their own sensor's and from every other sensor's on the vehicle: as a rule
 * a digit was lost. The value counts, with its stop, until the wheel was gauged again.
 */
export const unsupportedGauges = (facts: {
  readonly road: readonly WheelFacts[]
  readonly events: EventFacts
}): readonly WheelFacts[] =>
  facts.road.filter((wheel) => {
    const { judged, sensor } = wheel
    if (judged === null || sensor.pressure === null || doesNotFollow(wheel) || isAsleep(facts, wheel))
      return false
    const isFar = (pressure: typeof judged, least: typeof thresholds.gaugeFromOwnSensor) =>
      atOrAbove(magnitude(kilopascalsOver(judged, pressure)), least)
    return (
      isFar(sensor.pressure, thresholds.gaugeFromOwnSensor) &&
      facts.road.every(
        (other) =>
          other.sensor.pressure === null || isFar(other.sensor.pressure, thresholds.gaugeFromAnySensor),
      )
    )
  })
