import { above, atOrBelow } from '../../pressure/threshold.ts'
import { thresholds } from '../thresholds.ts'
import type { EventFacts } from './event-facts.ts'
import type { Offsets } from './offsets.ts'
import type { WheelFacts } from './wheel-facts.ts'

type Seen = {
  readonly road: readonly WheelFacts[]
  readonly offsets: Offsets | null
  readonly events: EventFacts
}

/** A sensor whose value does not follow the tire's. */
export const doesNotFollow = (wheel: WheelFacts): boolean => wheel.sensor.follows === false

/** A new sensor that still reports nothing although its tire holds air: it has not been woken yet. */
export const isAsleep = (facts: { readonly events: EventFacts }, wheel: WheelFacts): boolean =>
  wheel.sensor.pressure !== null &&
  atOrBelow(wheel.sensor.pressure, thresholds.asleepAtMost) &&
  wheel.judged !== null &&
  above(wheel.judged, thresholds.runLowAlways) &&
  isNew(facts, wheel)

const isNew = (facts: { readonly events: EventFacts }, wheel: WheelFacts): boolean =>
  facts.events.happened('sensor-fitted-today', wheel.position) ||
  facts.events.happened('sensor-replaced-elsewhere', wheel.position) ||
  (typeof wheel.given.sensorAgeMonths === 'number' &&
    wheel.given.sensorAgeMonths <= thresholds.newSensorMonths)

/** Road wheels whose sensor's own value must not be held against the tire. */
export const wheelsWithDoubtfulSensor = (facts: Seen): ReadonlySet<WheelFacts> =>
  new Set([
    ...(facts.offsets?.apart ?? []),
    ...facts.road.filter((wheel) => doesNotFollow(wheel) || isAsleep(facts, wheel)),
  ])
