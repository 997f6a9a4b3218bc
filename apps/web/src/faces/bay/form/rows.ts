import { mistakenVin, type ScanTarget } from '../../../features/scanning/scan-target.ts'
import { numberFrom, type PadLimits } from '../../../ui/number-text.ts'
import {
  type ChoiceRow,
  commonFault,
  type NumberRow,
  type RowOption,
  type RowValues,
  type SeveralRow,
  type TextRow,
} from '../../../ui/rows/rows.ts'

type BayRow = {
  /** Leaving it out must be said; silence is not enough. */
  readonly asked?: true
  /** Comes up only when its cell is tapped: what few readers show. */
  readonly aside?: true
}

/** One thing that a step records: a row of any form, with what a pad for gloves and a scanner need of it. */
export type Row = BayRow &
  (
    | (NumberRow & {
        readonly limits?: PadLimits
        readonly step?: number | null
        /** Figures that one press may take, each with what it is the same as. */
        readonly suggestions?: readonly RowOption[]
        readonly signed?: boolean
      })
    | (ChoiceRow & {
        /** Many short options: figures. */
        readonly isShort?: true
      })
    | SeveralRow
    | (TextRow & {
        /** A sensor's ID: keys of our own for its sixteen signs. */
        readonly hex?: boolean
        /** Filled by one paste or scan: a button for it, and the field is ready for a scanner. */
        readonly paste?: true
        /** What a scanner may fill in here; a button opens the camera for it. */
        readonly scan?: ScanTarget
        readonly suggestions?: readonly RowOption[]
      })
  )

/** What is wrong with the current value and what is allowed; `undefined` if nothing is wrong or nothing is typed. */
export const rowFault = (row: Row, value: string | null | undefined): string | undefined =>
  (row.kind === 'text' && value ? mistakenVin(row.scan, value) : undefined) ?? commonFault(row, value)

export const isAnswered = (row: Row, value: string | null | undefined): boolean => {
  if (value === null) return row.optional !== undefined
  if (value === undefined || value.trim() === '' || rowFault(row, value) !== undefined) return false
  return row.kind !== 'number' || numberFrom(value) !== null
}

/** Rows that must be answered and are not. */
export const rowsOpen = (rows: readonly Row[], values: RowValues): Row[] =>
  rows.filter((row) =>
    row.optional === undefined || row.asked
      ? !isAnswered(row, values[row.key])
      : (values[row.key] ?? '') !== '' && !isAnswered(row, values[row.key]),
  )

/**
 * The row to go to after one is answered: the next that has no answer yet, else an earlier one that must be answered, or
 * none.
 */
export const rowAfter = (rows: readonly Row[], values: RowValues, key: string): Row | null => {
  const at = rows.findIndex((row) => row.key === key)
  return (
    rows
      .slice(at + 1)
      .find((row) => !row.aside && values[row.key] !== null && !isAnswered(row, values[row.key])) ??
    rowsOpen(rows, values).find((row) => row.key !== key) ??
    null
  )
}

/** The row to show where nobody has chosen one: the first without an answer, else the last that comes up by itself. */
export const rowToShow = (rows: readonly Row[], values: RowValues): Row | undefined => {
  const usual = rows.filter(({ aside }) => !aside)
  return usual.find((row) => values[row.key] === undefined) ?? rowsOpen(rows, values)[0] ?? usual.at(-1)
}
