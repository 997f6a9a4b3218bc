import { EventKind } from '../../evidence/evidence-schema.ts'
import { metersFromFeet } from '../../units/length-units.ts'
import { roadPositions } from '../../wheels.ts'
import type { Facts } from '../facts/facts.ts'
import { each, type FieldCheck } from './field-check.ts'

const eventQuestions: Readonly<Record<EventKind, string>> = {
  rotation: 'Ask whether the tires were rotated.',
  'tires-changed': 'Ask whether tires were changed.',
  'seasonal-wheels': 'Ask whether a seasonal set was fitted.',
  'used-wheel': 'Ask whether a used wheel was fitted.',
  'aftermarket-wheels': "Look whether the wheels are the maker's.",
  'sensor-fitted-today': 'Note whether a sensor was fitted today.',
  'sensor-replaced-elsewhere': 'Ask whether someone replaced a sensor.',
  'serviced-today': 'Note whether the vehicle was serviced today.',
  'battery-disconnected': 'Ask whether the battery was changed or disconnected.',
  'control-module-work': 'Ask whether a control module was worked on.',
  collision: 'Ask about a collision or a hard pothole, and at which corner.',
  sealant: 'Ask whether a can of sealant was used.',
  'driven-low': 'Ask whether a tire was driven low or flat.',
  'topped-up-before-arrival': 'Ask whether air was put in on the way here.',
  'air-added': 'Say whether air was added since our reading.',
  'moved-since-reading': 'Say whether wheels were moved since our reading.',
  'dash-cam-added': 'Ask whether a dash-cam was added.',
  'charger-added': 'Ask whether a charger was added.',
  'window-film-added': 'Ask whether window film was added.',
  'one-place-only': 'Ask whether it happens in one place only.',
  chains: 'Ask whether chains were on.',
  'packed-snow': 'Look for packed snow or ice in the wheels.',
}

const ofOneWheel: ReadonlySet<EventKind> = new Set(['collision', 'driven-low'])

const whichWheel = {
  collision: 'Ask which corner was struck.',
  sealant: 'Find the tire that the sealant went into.',
  'driven-low': 'Ask which tire was driven low.',
} as const

/** What the customer and the place can tell. */
export const surroundingsChecks: readonly FieldCheck[] = [
  ...EventKind.options.map(
    (kind): FieldCheck => ({
      field: `events.${kind}`,
      ask: eventQuestions[kind],
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
      ask: whichWheel[kind],
      seconds: 10,
      applies: (facts) => facts.events.happened(kind) && facts.events.namedWheelsOf(kind).length === 0,
      suppositions: () => each(`events.${kind}.wheel`, roadPositions),
    }),
  ),
  {
    field: 'surroundings.outdoor',
    ask: 'Note the temperature outdoors.',
    seconds: 10,
    suppositions: (facts) => temperatures(facts, 'surroundings.outdoor', [0, -20]),
  },
  {
    field: 'surroundings.tires',
    ask: 'Note whether the tires are cold, driven or warmed indoors.',
    seconds: 5,
    suppositions: () => each('surroundings.tires', ['cold', 'driven', 'indoor-warmed']),
  },
  {
    field: 'surroundings.tireTemperature',
    ask: 'Measure the temperature of the tires.',
    seconds: 20,
    applies: (facts) => facts.wheels.some((wheel) => wheel.sensor.temperature === null),
    suppositions: (facts) => temperatures(facts, 'surroundings.tireTemperature', [0, 30]),
  },
  {
    field: 'surroundings.altitude',
    ask: 'Note the altitude of this place.',
    seconds: 10,
    suppositions: (facts) => altitudes(facts, 'surroundings.altitude', [0, 5_000]),
  },
  {
    field: 'surroundings.overnightLow',
    ask: 'Look up the low expected overnight.',
    seconds: 10,
    suppositions: (facts) => temperatures(facts, 'surroundings.overnightLow', [0, -25]),
  },
  {
    field: 'surroundings.minutesDriven',
    ask: 'Ask how long it was driven since it stood or was serviced.',
    seconds: 5,
    suppositions: () => each('surroundings.minutesDriven', [0, 30]),
  },
  {
    field: 'surroundings.lastSet.temperature',
    ask: 'Ask when the pressures were last set, and how warm it was.',
    seconds: 10,
    suppositions: (facts) => temperatures(facts, 'surroundings.lastSet.temperature', [0, 30]),
  },
  {
    field: 'surroundings.lastSet.altitude',
    ask: 'Ask where the pressures were last set.',
    seconds: 10,
    suppositions: (facts) => altitudes(facts, 'surroundings.lastSet.altitude', [0, 5_000]),
  },
]

/** Kelvin away from the air outdoors, or from 15 °C where that is not known. */
const temperatures = (facts: Facts, field: string, away: readonly number[]) =>
  each(
    field,
    away.map((kelvin) => facts.shown.temperatureNumber((facts.place.outdoor ?? 288.15) + kelvin)),
  )

const altitudes = (facts: Facts, field: string, feet: readonly number[]) =>
  each(
    field,
    feet.map((one) => (facts.evidence.units.altitude === 'ft' ? one : metersFromFeet(one))),
  )
