import { numberFrom, type PadLimits } from '../../../ui/number-text.ts'

type RowBase = {
  readonly key: string
  readonly label: string
  /** The word for leaving it out: "not read". Absent: it cannot be left out. */
  readonly optional?: string
  /** Leaving it out must be said; silence is not enough. */
  readonly asked?: true
  /** Comes up only when its cell is tapped: what few readers show. */
  readonly aside?: true
}

/** One thing that a step records. All values are kept as the text that was typed or the value that was chosen. */
export type Row =
  | (RowBase & {
      readonly kind: 'number'
      /** Empty: a code, no figure. */
      readonly unit: string
      readonly low: number
      readonly high: number
      readonly limits?: PadLimits
      readonly step?: number | null
      /** Figures that one press may take, each with what it is the same as. */
      readonly suggestions?: readonly RowOption[]
      readonly signed?: boolean
      readonly hint?: string | undefined
      /** What is wrong with it, where more than its range decides. */
      readonly fault?: (text: string) => string | undefined
    })
  | (RowBase & {
      readonly kind: 'choice'
      readonly options: readonly RowOption[]
      /** Many short options: figures. */
      readonly isShort?: true
      readonly hint?: string
    })
  /** Any number of a few; `noneWord` says that none of them is so. */
  | (RowBase & {
      readonly kind: 'several'
      readonly options: readonly RowOption[]
      readonly noneWord: string
    })
  | (RowBase & {
      readonly kind: 'text'
      readonly exact?: boolean
      /** A sensor's ID: keys of our own for its sixteen signs. */
      readonly hex?: boolean
      /** Filled by one paste or scan: a button for it, and the field is ready for a scanner. */
      readonly paste?: true
      readonly hint?: string
      readonly suggestions?: readonly RowOption[]
      readonly fault?: (text: string) => string | undefined
    })

export type RowOption = { readonly value: string; readonly label: string; readonly detail?: string }

/** Absent: not answered yet. Null: left out on purpose. */
export type RowValues = Readonly<Record<string, string | null>>

/** The value that means none of several. */
export const noneOfThem = 'none'

/** What is wrong with the current value and what is allowed; `undefined` if nothing is wrong or nothing is typed. */
export const rowFault = (row: Row, value: string | null | undefined): string | undefined => {
  if (value === null || value === undefined || value === '') return undefined
  if (row.kind !== 'text' && row.kind !== 'number') return undefined
  const fault = row.fault?.(value)
  if (fault !== undefined || row.kind === 'text') return fault
  const number = numberFrom(value)
  if (number === null) return undefined
  return number < row.low || number > row.high
    ? `${value} ${row.unit} cannot be: allowed is ${row.low} to ${row.high} ${row.unit}. Read it again.`
    : undefined
}

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

/** What a row says in its cell; `null` while it is not answered. */
export const rowWords = (row: Row, value: string | null | undefined): string | null => {
  if (value === null) return row.optional ?? 'left out'
  if (value === undefined || value === '') return null
  if (row.kind === 'number') return `${value.replace('-', '−')} ${row.unit}`.trimEnd()
  if (row.kind === 'text') return value
  if (row.kind === 'several' && value === noneOfThem) return row.noneWord
  const chosen = value.split(',')
  return row.options
    .filter((option) => chosen.includes(option.value))
    .map(({ label }) => label)
    .join(', ')
}

/** The values after one of several was tapped. */
export const toggled = (value: string | null | undefined, option: string): string => {
  const chosen = new Set((value ?? '').split(',').filter((one) => one !== '' && one !== noneOfThem))
  if (!chosen.delete(option)) chosen.add(option)
  return [...chosen].join(',')
}
