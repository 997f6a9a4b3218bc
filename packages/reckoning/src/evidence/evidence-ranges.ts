import type * as z from 'zod/mini'
import { readingOrder } from '../wheels.ts'
import { evidenceWords } from '../words/evidence.ts'
import type { EvidenceFault } from './evidence-faults.ts'
import { isFieldPath } from './evidence-fields.ts'
import { EventKind, type Evidence, type Units, type WheelEvidence } from './evidence-schema.ts'

/**
 * What a schema of single fields cannot say: bounds that depend on the unit, fields that are allowed only with others,
 * and paths that must name a field. Inside these bounds an implausible value is a finding, not a fault.
 */
export const rangeFaults = (schema: z.core.$ZodType, evidence: Evidence): EvidenceFault[] => [
  ...pressures(evidence).flatMap(within(pressureBounds[evidence.units.pressure], evidence.units.pressure)),
  ...temperatures(evidence).flatMap(
    within(temperatureBounds[evidence.units.temperature], `°${evidence.units.temperature}`),
  ),
  ...altitudes(evidence).flatMap(within(altitudeBounds[evidence.units.altitude], evidence.units.altitude)),
  ...answersOnly(evidence),
  ...puncturesOnly(evidence),
  ...decimalIds(evidence),
  ...unknownPaths(schema, evidence),
]

type Bounds = { readonly least: number; readonly most: number }
type Entry = { readonly field: string; readonly value: number | null | undefined }

/** -20 to 400 psi. */
export const pressureBounds: Readonly<Record<Units['pressure'], Bounds>> = {
  psi: { least: -20, most: 400 },
  kPa: { least: -137.9, most: 2757.91 },
  bar: { least: -1.3791, most: 27.5791 },
}

/** -150 to 600 °F. */
export const temperatureBounds: Readonly<Record<Units['temperature'], Bounds>> = {
  F: { least: -150, most: 600 },
  C: { least: -101.12, most: 315.56 },
}

/** From below the lowest road on earth to above the highest. */
const altitudeBounds: Readonly<Record<Units['altitude'], Bounds>> = {
  ft: { least: -1_500, most: 20_000 },
  m: { least: -457.2, most: 6_096 },
}

const within =
  (bounds: Bounds, unit: string) =>
  ({ field, value }: Entry): EvidenceFault[] => {
    if (value === null || value === undefined || (value >= bounds.least && value <= bounds.most)) return []
    return [{ field, found: String(value), allowed: evidenceWords.range(bounds.least, bounds.most, unit) }]
  }

const wheelsOf = (evidence: Evidence): [string, WheelEvidence][] =>
  readingOrder.flatMap((position) => {
    const wheel = evidence.wheels?.[position]
    return wheel ? [[position, wheel]] : []
  })

const pressures = (evidence: Evidence): Entry[] => [
  ...(['placard', 'warnAt', 'sidewallMaximum'] as const).flatMap((name) =>
    (['front', 'rear', 'spare'] as const).map((axle) => ({
      field: `vehicle.${name}.${axle}`,
      value: evidence.vehicle?.[name]?.[axle],
    })),
  ),
  ...wheelsOf(evidence).flatMap(([position, wheel]) => [
    { field: `wheels.${position}.gauge`, value: wheel.gauge },
    { field: `wheels.${position}.sensorPressure`, value: wheel.sensorPressure },
  ]),
  ...(evidence.history?.earlierReadings ?? []).map((reading, index) => ({
    field: `history.earlierReadings.${index}.pressure`,
    value: reading.pressure,
  })),
]

const temperatures = (evidence: Evidence): Entry[] => [
  ...wheelsOf(evidence).map(([position, wheel]) => ({
    field: `wheels.${position}.sensorTemperature`,
    value: wheel.sensorTemperature,
  })),
  ...(['outdoor', 'tireTemperature', 'overnightLow'] as const).map((name) => ({
    field: `surroundings.${name}`,
    value: evidence.surroundings?.[name],
  })),
  { field: 'surroundings.lastSet.temperature', value: evidence.surroundings?.lastSet?.temperature },
  ...(evidence.history?.earlierReadings ?? []).map((reading, index) => ({
    field: `history.earlierReadings.${index}.temperature`,
    value: reading.temperature,
  })),
]

const altitudes = (evidence: Evidence): Entry[] => [
  { field: 'surroundings.altitude', value: evidence.surroundings?.altitude },
  { field: 'surroundings.lastSet.altitude', value: evidence.surroundings?.lastSet?.altitude },
  ...(evidence.history?.earlierReadings ?? []).map((reading, index) => ({
    field: `history.earlierReadings.${index}.altitude`,
    value: reading.altitude,
  })),
]

/** Members that only an answering sensor can have. */
const told = ['id', 'sensorPressure', 'sensorTemperature', 'battery', 'frequencyMHz'] as const

const answersOnly = (evidence: Evidence): EvidenceFault[] =>
  wheelsOf(evidence).flatMap(([position, wheel]) =>
    wheel.answer === 'answered' || wheel.answer === null || wheel.answer === undefined
      ? []
      : told.flatMap((name) => {
          const value = wheel[name]
          if (value === null || value === undefined) return []
          const field = `wheels.${position}.${name}`
          return [{ field, found: String(value), allowed: evidenceWords.answeredOnly }]
        }),
  )

const puncturesOnly = (evidence: Evidence): EvidenceFault[] =>
  wheelsOf(evidence).flatMap(([position, { punctures, tireDamage }]) =>
    (punctures ?? []).length === 0 || tireDamage?.includes('puncture')
      ? []
      : [
          {
            field: `wheels.${position}.punctures`,
            found: evidenceWords.found.list(punctures?.length ?? 0),
            allowed: evidenceWords.punctureOnly,
          },
        ],
  )

const decimalIds = (evidence: Evidence): EvidenceFault[] => {
  if (evidence.controlModule?.notation !== 'decimal') return []
  return readingOrder.flatMap((position) => {
    const id = evidence.controlModule?.ids?.[position]
    if (id === null || id === undefined || /^\d+$/.test(id)) return []
    return [{ field: `controlModule.ids.${position}`, found: id, allowed: evidenceWords.decimalDigits }]
  })
}

/** What may be named in `notPossible`: a field of the evidence, or an event by its kind. */
export const isKnownPath = (schema: z.core.$ZodType, path: string): boolean =>
  isFieldPath(schema, path) ||
  EventKind.options.some((kind) => path === `events.${kind}` || path === `events.${kind}.wheel`)

const unknownPaths = (schema: z.core.$ZodType, evidence: Evidence): EvidenceFault[] =>
  (evidence.notPossible ?? []).flatMap(({ field }, index) =>
    isKnownPath(schema, field)
      ? []
      : [
          {
            field: `notPossible.${index}.field`,
            found: field,
            allowed: evidenceWords.fieldPath,
          },
        ],
  )
