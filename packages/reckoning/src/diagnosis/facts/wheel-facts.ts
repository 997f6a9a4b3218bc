import type { Evidence, WheelEvidence } from '../../evidence/evidence-schema.ts'
import { kilopascals } from '../../evidence/si.ts'
import { shiftPressure } from '../../pressure/shift-pressure.ts'
import { above, below } from '../../pressure/threshold.ts'
import {
  type GaugeKilopascals,
  gaugeKilopascals,
  type Kelvin,
  type KilopascalsApart,
  kelvins,
} from '../../units/measured.ts'
import { kilopascalsOver } from '../../units/pressure-difference.ts'
import type { WheelPosition } from '../../wheels.ts'
import { thresholds } from '../thresholds.ts'
import type { EventFacts } from './event-facts.ts'
import { isHotCorner } from './hot-corner.ts'
import { type LabelFacts, readLabel } from './label-facts.ts'
import type { PlaceFacts } from './place-facts.ts'
import { readSensor, type SensorFacts } from './sensor-facts.ts'

/** One wheel as the rules see it: pressures in kPa, temperatures in kelvin, null where not known. */
export type WheelFacts = LabelFacts & {
  readonly position: WheelPosition
  readonly road: boolean
  readonly given: WheelEvidence
  readonly carriesSpare: boolean
  /** The vehicle listens for a sensor here. */
  readonly monitored: boolean
  readonly sensor: SensorFacts
  readonly gaugeImpossible: boolean
  readonly stale: boolean
  /** The gauge value as entered, even if stale or impossible: a stop uses whatever is known. */
  readonly entered: GaugeKilopascals | null
  /** The gauge value, if a pressure verdict may use it. */
  readonly judged: GaugeKilopascals | null
  readonly temperature: Kelvin | null
  /** Gauge value brought to outdoor temperature. */
  readonly cold: GaugeKilopascals | null
  readonly deficit: KilopascalsApart | null
  /** What the vehicle sees: the sensor's value where it answered, else the gauge. */
  readonly seen: GaugeKilopascals | null
}

export type WheelContext = {
  readonly evidence: Evidence
  readonly place: PlaceFacts
  readonly events: EventFacts
  readonly sensing: boolean
}

export const readWheels = (
  context: WheelContext,
  positions: readonly WheelPosition[],
): readonly WheelFacts[] => {
  const { wheels } = context.evidence
  const sensors = positions.map((position) => ({
    position,
    road: position !== 'SP',
    sensor: readSensor(context.evidence, wheels?.[position]),
  }))
  return sensors.map((own) => readWheel(context, own, sensors))
}

type SensorAt = { readonly position: WheelPosition; readonly road: boolean; readonly sensor: SensorFacts }

const readWheel = (
  { evidence, events, sensing, place }: WheelContext,
  own: SensorAt,
  sensors: readonly SensorAt[],
): WheelFacts => {
  const { position, road, sensor } = own
  const given = evidence.wheels?.[position] ?? {}
  const carriesSpare = road && given.mounted === 'temporary-spare'
  const label = readLabel(evidence, position, carriesSpare)
  const entered = typeof given.gauge === 'number' ? kilopascals(given.gauge, evidence.units.pressure) : null
  const gaugeImpossible = entered !== null && isImpossible(evidence, position, label, entered)
  const stale =
    road && (events.happened('moved-since-reading', position) || events.happened('air-added', position))
  const judged = stale || gaugeImpossible ? null : entered
  const temperature = temperatureOf(place, own, sensors)
  const cold = coldPressure(place, judged, temperature)
  return {
    ...label,
    position,
    road,
    given,
    carriesSpare,
    monitored: sensing && (road ? !carriesSpare : evidence.vehicle?.spareMonitored === true),
    sensor,
    gaugeImpossible,
    stale,
    entered,
    judged,
    temperature,
    cold,
    deficit: cold === null || label.label === null ? null : kilopascalsOver(label.label, cold),
    seen: sensor.pressure ?? judged,
  }
}

/** A spare takes the class of the road tires where both axles agree and nobody noted its own. */
const isImpossible = (
  evidence: Evidence,
  position: WheelPosition,
  { loadClass }: LabelFacts,
  gauge: GaugeKilopascals,
): boolean => {
  const { front, rear } = evidence.vehicle?.loadClass ?? {}
  const known = loadClass ?? (position === 'SP' && front === rear ? front : null)
  const most =
    known === 'SL' || known === 'XL' || known === 'HL'
      ? thresholds.passengerGaugeMost
      : thresholds.anyGaugeMost
  return below(gauge, gaugeKilopascals(0)) || above(gauge, most)
}

/**
 * The temperature of a tire's air: from its own sensor, else as measured at the tires, else for warm tires the others'
 * mean, else the open air's. In a hot corner the sensor measures the rim and not the air, so there the others' mean
 * counts, and a hot corner enters no mean.
 */
const temperatureOf = (place: PlaceFacts, own: SensorAt, sensors: readonly SensorAt[]): Kelvin | null => {
  const road = sensors.filter((one) => one.road)
  const others = road.flatMap((one) =>
    one === own || isHotCorner(road, one) ? [] : (one.sensor.temperature ?? []),
  )
  const othersMean =
    others.length === 0 ? null : kelvins(others.reduce((sum, one) => sum + one, 0) / others.length)
  if (isHotCorner(road, own) && othersMean !== null) return othersMean
  if (own.sensor.temperature !== null) return own.sensor.temperature
  if (place.tireTemperature !== null) return place.tireTemperature
  return (place.tiresWarm ? othersMean : null) ?? place.outdoor
}

/** Cold tires are at outdoor temperature, so their gauge value needs no outdoor figure. */
const coldPressure = (
  place: PlaceFacts,
  judged: GaugeKilopascals | null,
  temperature: Kelvin | null,
): GaugeKilopascals | null => {
  if (judged === null) return null
  if (temperature !== null && place.outdoor !== null) {
    return shiftPressure({
      gauge: judged,
      from: temperature,
      to: place.outdoor,
      airBefore: place.air,
      airAfter: place.air,
    })
  }
  return place.tiresCold ? judged : null
}
