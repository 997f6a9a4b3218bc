import { EventKind } from '../../evidence/evidence-schema.ts'
import { metersFromFeet } from '../../units/length-units.ts'
import { roadPositions } from '../../wheels.ts'
import type { Facts } from '../facts/facts.ts'
import { each, type FieldCheck } from './field-check.ts'

const ofOneWheel: ReadonlySet<EventKind> = new Set(['collision', 'driven-low'])

/** What can be learned from the customer and the place. */
export const surroundingsChecks: readonly FieldCheck[] = [
  ...EventKind.options.map(
    (kind): FieldCheck => ({
      field: `events.${kind}`,
      seconds: 5,
      suppositions: () => [
        { [`events.${kind}`]: { happened: false } },
        ...(ofOneWheel.has(kind)
          ? roadPositions.map((wheel) => ({ [`events.${kind}`]: { wheel } }))
          : [{ [`events.${kind}`]: {} }]),
      ],
    }),
  ),
  ...(['collision', 'sealant', 'driven-low'] as const).map(
    (kind): FieldCheck => ({
      field: `events.${kind}.wheel`,
      seconds: 10,
      applies: (facts) => facts.events.happened(kind) && facts.events.namedWheelsOf(kind).length === 0,
      suppositions: () => each(`events.${kind}.wheel`, roadPositions),
    }),
  ),
  {
    field: 'surroundings.outdoor',
    seconds: 10,
    suppositions: (facts) => temperatures(facts, 'surroundings.outdoor', [0, -20]),
  },
  {
    field: 'surroundings.tires',
    seconds: 5,
    suppositions: () => each('surroundings.tires', ['cold', 'driven', 'indoor-warmed']),
  },
  {
    field: 'surroundings.tireTemperature',
    seconds: 20,
    applies: (facts) => facts.wheels.some((wheel) => wheel.sensor.temperature === null),
    suppositions: (facts) => temperatures(facts, 'surroundings.tireTemperature', [0, 30]),
  },
  {
    field: 'surroundings.altitude',
    seconds: 10,
    suppositions: (facts) => altitudes(facts, 'surroundings.altitude', [0, 5_000]),
  },
  {
    field: 'surroundings.overnightLow',
    seconds: 10,
    suppositions: (facts) => temperatures(facts, 'surroundings.overnightLow', [0, -25]),
  },
  {
    field: 'surroundings.minutesDriven',
    seconds: 5,
    suppositions: () => each('surroundings.minutesDriven', [0, 30]),
  },
  {
    field: 'surroundings.lastSet.temperature',
    seconds: 10,
    suppositions: (facts) => temperatures(facts, 'surroundings.lastSet.temperature', [0, 30]),
  },
  {
    field: 'surroundings.lastSet.altitude',
    seconds: 10,
    suppositions: (facts) => altitudes(facts, 'surroundings.lastSet.altitude', [0, 5_000]),
  },
]

/** Kelvin away from the air outdoors, or from 15 °C where that is not known. */
const temperatures = (facts: Facts, field: string, away: readonly number[]) =>
  each(
    field,
    away.map((kelvin) => facts.display.temperature((facts.place.outdoor ?? 288.15) + kelvin)),
  )

const altitudes = (facts: Facts, field: string, feet: readonly number[]) =>
  each(
    field,
    feet.map((one) => (facts.evidence.units.altitude === 'ft' ? one : metersFromFeet(one))),
  )
