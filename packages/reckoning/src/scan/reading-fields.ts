import { pressureBounds, temperatureBounds } from '../evidence/evidence-ranges.ts'
import type { Pressure, Temperature } from '../quantity.ts'
import { readSensorId } from '../sensor/read-sensor-id.ts'
import { readVin } from '../vehicle/vin.ts'
import { notShown, type WheelReading } from './wheel-readings.ts'

/** Why a field of a reading was not taken; the values say what would be. */
export type FieldFault =
  | { readonly code: 'is-a-vin' | 'id-too-short' | 'no-number' | 'not-a-battery' | 'not-a-count' }
  | { readonly code: 'not-an-id'; readonly allowed: string; readonly do: string }
  | { readonly code: 'no-unit'; readonly units: readonly string[] }
  | { readonly code: 'out-of-range'; readonly least: number; readonly most: number; readonly unit: string }

/** A field's value, null where the reader does not show it, or what is wrong with it. */
export type FieldRead<Value> =
  | { readonly ok: true; readonly value: Value | null }
  | { readonly ok: false; readonly fault: FieldFault }

type Answered = Extract<WheelReading, { answer: 'answered' }>

const taken = <Value>(value: Value | null): FieldRead<Value> => ({ ok: true, value })
const faulty = (fault: FieldFault): FieldRead<never> => ({ ok: false, fault })

/**
 * The ID of a sensor in a text of readings.
 *
 * @limits a whole hexadecimal ID of more than four signs
 * @source this program's own rule: docs/wheel-readings.md
 */
export const idField = (text: string): FieldRead<string> => {
  if (text === notShown) return taken<string>(null)
  if (readVin(text).ok) return faulty({ code: 'is-a-vin' })
  const read = readSensorId(text, 'hex')
  if (!read.ok) return faulty({ code: 'not-an-id', allowed: read.allowed, do: read.do })
  return read.value.text.length > 4 ? taken(read.value.text) : faulty({ code: 'id-too-short' })
}

/**
 * A pressure in a text of readings.
 *
 * @units psi, kPa or bar, as written
 * @limits those of the evidence
 * @source this program's own rule: docs/wheel-readings.md
 */
export const pressureField = (text: string): FieldRead<Pressure> =>
  quantity(text, ['psi', 'kPa', 'bar'], pressureBounds)

/**
 * A temperature in a text of readings.
 *
 * @units °F or °C, as written
 * @limits those of the evidence
 * @source this program's own rule: docs/wheel-readings.md
 */
export const temperatureField = (text: string): FieldRead<Temperature> =>
  quantity(text.replace('°', ''), ['F', 'C'], temperatureBounds)

/**
 * A frequency in a text of readings.
 *
 * @units MHz
 * @limits 1 to 10,000, as the evidence has it
 * @source this program's own rule: docs/wheel-readings.md
 */
export const frequencyField = (text: string): FieldRead<number> => {
  const read = quantity(text, ['MHz'], { MHz: { least: 1, most: 10_000 } })
  return read.ok ? taken(read.value?.value ?? null) : read
}

/**
 * The state of a battery in a text of readings.
 *
 * @limits ok, low or not-reported, as the evidence has it
 * @source this program's own rule: docs/wheel-readings.md
 */
export const batteryField = (text: string): FieldRead<NonNullable<Answered['battery']>> => {
  if (text === notShown) return { ok: true, value: null }
  const word = (['ok', 'low', 'not-reported'] as const).find((one) => one === text.toLowerCase())
  return word === undefined ? faulty({ code: 'not-a-battery' }) : taken(word)
}

/**
 * How often a silent sensor was asked; once where nothing is said.
 *
 * @limits 1 to 99
 * @source this program's own rule: docs/wheel-readings.md
 */
export const triesField = (text: string | undefined): FieldRead<number> => {
  if (text === undefined) return taken(1)
  return /^[1-9]\d?$/.test(text) ? taken(Number(text)) : faulty({ code: 'not-a-count' })
}

const quantity = <Unit extends string>(
  text: string,
  units: readonly Unit[],
  bounds: Readonly<Record<Unit, { readonly least: number; readonly most: number }>>,
): FieldRead<{ readonly value: number; readonly unit: Unit }> => {
  if (text === notShown) return { ok: true, value: null }
  const [, figure, written = ''] = /^([-+−]?\d+(?:\.\d+)?)\s*(.*)$/.exec(text) ?? []
  if (figure === undefined) return faulty({ code: 'no-number' })
  const unit = units.find((one) => one.toLowerCase() === written.toLowerCase())
  if (unit === undefined) return faulty({ code: 'no-unit', units })
  const value = Number(figure.replace('−', '-'))
  const { least, most } = bounds[unit]
  return value < least || value > most
    ? faulty({ code: 'out-of-range', least, most, unit })
    : taken({ value, unit })
}
