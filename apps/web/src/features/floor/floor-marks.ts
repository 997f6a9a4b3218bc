import type { FloorRow } from '@bayledger/contract/orders'
import { namedWait } from './until-words.ts'

/** What an eye that runs down the list must find: each has a word, in a place and a shape of its own. */
export type FloorMarks = {
  /** The customer sits in the shop. */
  readonly waitsHere: boolean
  /** The promise has passed, the vehicle is not finished, and no later time was agreed with the customer. */
  readonly isLate: boolean
  /** A wheel is off, not torqued or not checked, and nobody drives this vehicle: which of these, and whether its sentence is first. */
  readonly wheel: { readonly words: string; readonly isFirst: boolean } | null
  /** What must be known before anybody touches a tire. */
  readonly care: readonly string[]
}

const insecure: Readonly<Record<string, string>> = {
  'wheel-off': 'wheel off',
  'wheel-untorqued': 'not torqued',
  'torque-check': 'not checked',
}
const careWords: Readonly<Record<string, string>> = { sealant: 'sealant', 'run-low': 'driven low' }

/** The marks of one row at an instant of the server's clock, UTC text. */
export const floorMarks = (row: FloorRow, asOf: string): FloorMarks => ({
  waitsHere: row.isOpen && row.waitsHere,
  isLate:
    row.isOpen &&
    row.promisedAt !== null &&
    asOf !== '' &&
    row.promisedAt < asOf &&
    namedWait(row)?.agreed !== true,
  wheel: wheelMark(row),
  care: row.moves.flatMap(({ code, values }) =>
    code === 'handle-with-care' ? (careWords[String(values.danger)] ?? []) : [],
  ),
})

const wheelMark = ({ moves }: FloorRow): FloorMarks['wheel'] => {
  const place = moves.findIndex(({ code, wheel }) => insecure[code] !== undefined && wheel !== null)
  const words = insecure[moves[place]?.code ?? '']
  return words === undefined ? null : { words, isFirst: place === 0 }
}
