import { idKey } from '../sensor/sensor-id.ts'
import { WheelPosition } from '../wheels.ts'
import {
  batteryField,
  type FieldFault,
  type FieldRead,
  frequencyField,
  idField,
  pressureField,
  temperatureField,
  triesField,
} from './reading-fields.ts'
import { notTried, silent, type WheelReading } from './wheel-readings.ts'

export type ReadingField =
  | 'wheel'
  | 'id'
  | 'pressure'
  | 'temperature'
  | 'battery'
  | 'frequency'
  | 'tries'
  | 'end'

/** What is wrong with one field of one line. */
export type ReadingFault = {
  /** From 1 on. */
  readonly line: number
  /** `null` where the line names none. */
  readonly wheel: WheelPosition | null
  readonly field: ReadingField
  readonly found: string
  readonly why: FieldFault | { readonly code: 'not-a-wheel' | 'wheel-twice' | 'id-twice' | 'too-many-fields' }
}

export type WheelReadings = {
  readonly readings: readonly WheelReading[]
  readonly faults: readonly ReadingFault[]
}

/**
 * Reads the readings of several wheels from a text of one line a wheel. A line with a fault gives no reading, a wheel or
 * an ID that comes twice gives none for both, and nothing is put right. Empty lines and those that begin with # are
 * passed over.
 *
 * @units each figure with its own
 * @limits 100 lines
 * @source this program's own rule: docs/wheel-readings.md
 */
export const readWheelReadings = (text: string): WheelReadings => {
  const lines = text
    .split(/\r\n|\r|\n/)
    .slice(0, 100)
    .flatMap((line, index) => (/^\s*(#|$)/.test(line) ? [] : [readLine(line, index + 1)]))
  const faults = lines.map((line) => line.fault ?? repeated(line, lines))
  return {
    readings: lines.flatMap(({ reading }, index) => (reading === null || faults[index] ? [] : [reading])),
    faults: faults.filter((fault) => fault !== null),
  }
}

type Line = {
  readonly line: number
  readonly wheel: WheelPosition | null
  readonly reading: WheelReading | null
  readonly fault: ReadingFault | null
}

const readLine = (text: string, line: number): Line => {
  const [first = '', ...fields] = text.split(',').map((field) => field.trim())
  const wheel = WheelPosition.options.find((one) => one === first.toUpperCase()) ?? null
  const fault = (field: ReadingField, found: string, why: ReadingFault['why']): Line => ({
    line,
    wheel,
    reading: null,
    fault: { line, wheel, field, found: shortened(found), why },
  })
  if (wheel === null) return fault('wheel', first, { code: 'not-a-wheel' })
  const good = (reading: WheelReading): Line => ({ line, wheel, reading, fault: null })

  const answer = (fields[0] ?? '').toLowerCase()
  const most = answer === notTried ? 1 : answer === silent ? 2 : 5
  const over = fields[most]
  if (over !== undefined) return fault('end', over, { code: 'too-many-fields' })
  if (answer === notTried) return good({ wheel, answer: 'not-tried' })
  if (answer === silent) {
    const tries = triesField(fields[1])
    return tries.ok
      ? good({ wheel, answer: 'silent', tries: tries.value ?? 1 })
      : fault('tries', fields[1] ?? '', tries.fault)
  }
  const [id = '', pressure = '-', temperature = '-', battery = '-', frequency = '-'] = fields
  const reads = {
    id: idField(id),
    pressure: pressureField(pressure),
    temperature: temperatureField(temperature),
    battery: batteryField(battery),
    frequency: frequencyField(frequency),
  }
  const texts = { id, pressure, temperature, battery, frequency }
  for (const field of ['id', 'pressure', 'temperature', 'battery', 'frequency'] as const) {
    const read = reads[field]
    if (!read.ok) return fault(field, texts[field], read.fault)
  }
  return good({
    wheel,
    answer: 'answered',
    id: known(reads.id),
    pressure: known(reads.pressure),
    temperature: known(reads.temperature),
    battery: known(reads.battery),
    frequencyMHz: known(reads.frequency),
  })
}

const known = <Value>(read: FieldRead<Value>): Value | null => (read.ok ? read.value : null)

const repeated = (one: Line, lines: readonly Line[]): ReadingFault | null => {
  const { line, wheel } = one
  const others = lines.filter((other) => other !== one)
  if (wheel !== null && others.some((other) => other.wheel === wheel))
    return { line, wheel, field: 'wheel', found: wheel, why: { code: 'wheel-twice' } }
  const id = idOf(one)
  return id !== null && others.some((other) => sameId(idOf(other), id))
    ? { line, wheel, field: 'id', found: id, why: { code: 'id-twice' } }
    : null
}

const idOf = ({ reading }: Line): string | null => (reading?.answer === 'answered' ? reading.id : null)

const sameId = (one: string | null, other: string): boolean =>
  one !== null && idKey(one, 'hex') === idKey(other, 'hex')

const shortened = (text: string): string => (text.length > 40 ? `${text.slice(0, 39)}…` : text)
