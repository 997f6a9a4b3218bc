import type { FloorRow } from '@bayledger/contract/orders'

/** What an eye that runs down the list must find: each has a word, in a place and a shape of its own. */
export type FloorMarks = {
  /** The customer sits in the shop. */
  readonly waitsHere: boolean
  /** The promise has passed and the vehicle is not finished. */
  readonly isLate: boolean
  /** A wheel is off, not torqued or not checked: nobody drives this vehicle. */
  readonly wheelOff: boolean
  /** What must be known before anybody touches a tire. */
  readonly care: readonly string[]
}

const insecure: readonly string[] = ['wheel-off', 'wheel-untorqued', 'torque-check']
const careWords: Readonly<Record<string, string>> = { sealant: 'sealant', 'run-low': 'driven low' }

/** The marks of one row at an instant of the server's clock, UTC text. */
export const floorMarks = (row: FloorRow, asOf: string): FloorMarks => ({
  waitsHere: row.isOpen && row.waitsHere,
  isLate: row.isOpen && row.promisedAt !== null && asOf !== '' && row.promisedAt < asOf,
  wheelOff: row.moves.some(({ code, wheel }) => insecure.includes(code) && wheel !== null),
  care: row.moves.flatMap(({ code, values }) =>
    code === 'handle-with-care' ? (careWords[String(values.danger)] ?? []) : [],
  ),
})
