import type { WheelEvidence } from '../evidence/evidence-schema.ts'
import type { Pressure, Temperature } from '../quantity.ts'
import { inReadingOrder, type WheelPosition } from '../wheels.ts'

/** What a reader says of one wheel's sensor. `null`: the reader does not show it. */
export type WheelReading =
  | {
      readonly wheel: WheelPosition
      readonly answer: 'answered'
      /** Hexadecimal. */
      readonly id: string | null
      readonly pressure: Pressure | null
      readonly temperature: Temperature | null
      readonly battery: NonNullable<WheelEvidence['battery']> | null
      readonly frequencyMHz: number | null
    }
  | { readonly wheel: WheelPosition; readonly answer: 'silent'; readonly tries: number }
  | { readonly wheel: WheelPosition; readonly answer: 'not-tried' }

/** The word for a wheel whose sensor nobody asked. */
export const notTried = 'not-tried'
export const silent = 'silent'
/** In the place of what a reader does not show. */
export const notShown = '-'

/**
 * Readings as text, one line a wheel in reading order: wheel, ID, pressure, temperature, battery, frequency. What comes
 * last and is not shown is left out. `readWheelReadings` reads the same readings from it.
 *
 * @units each figure in its own unit
 * @limits four decimals
 * @source this program's own rule: docs/wheel-readings.md
 */
export const writeWheelReadings = (readings: readonly WheelReading[]): string =>
  inReadingOrder(readings.map(({ wheel }) => wheel))
    .flatMap((wheel) => readings.filter((reading) => reading.wheel === wheel))
    .map((reading) => [reading.wheel, ...fieldsOf(reading)].join(', '))
    .join('\n')

const fieldsOf = (reading: WheelReading): string[] => {
  if (reading.answer === 'not-tried') return [notTried]
  if (reading.answer === 'silent') return [silent, String(reading.tries)]
  const { id, pressure, temperature, battery, frequencyMHz } = reading
  const fields = [
    id === null ? notShown : idText(id),
    pressure === null ? notShown : `${figure(pressure.value)} ${pressure.unit}`,
    temperature === null ? notShown : `${figure(temperature.value)} ${temperature.unit}`,
    battery ?? notShown,
    frequencyMHz === null ? notShown : `${figure(frequencyMHz)} MHz`,
  ]
  const shown = fields.findLastIndex((field) => field !== notShown)
  return fields.slice(0, Math.max(shown + 1, 1))
}

/** Nine or ten digits without a letter could be decimal as well; 0x says that they are not. */
const idText = (id: string): string => (/^\d{9,10}$/.test(id) ? `0x${id}` : id)

const figure = (value: number): string => String(Number(value.toFixed(4)))
