import { outOfRange } from '../../lib/fault-words.ts'
import { numberFrom } from '../number-text.ts'

/** What every row of a form has; the bay's pads and an owner's page draw the same rows, each in its own way. */
export type RowBase = {
  readonly key: string
  readonly label: string
  /** The word for leaving it out: "not read". Absent: it cannot be left out. */
  readonly optional?: string
}

export type RowOption = {
  readonly value: string
  readonly label: string
  readonly detail?: string
  /** The heading of a long list under which it is found. */
  readonly group?: string
}

export type NumberRow = RowBase & {
  readonly kind: 'number'
  /** Empty: a code, no figure. */
  readonly unit: string
  readonly low: number
  readonly high: number
  readonly hint?: string | undefined
  /** What is wrong with it, where more than its range decides. */
  readonly fault?: (text: string) => string | undefined
}

export type ChoiceRow = RowBase & {
  readonly kind: 'choice'
  readonly options: readonly RowOption[]
  readonly hint?: string
}

/** Any number of a few; `noneWord` says that none of them is so. */
export type SeveralRow = RowBase & {
  readonly kind: 'several'
  readonly options: readonly RowOption[]
  readonly noneWord: string
}

export type TextRow = RowBase & {
  readonly kind: 'text'
  readonly exact?: boolean
  readonly hint?: string
  readonly fault?: (text: string) => string | undefined
}

export type CommonRow = NumberRow | ChoiceRow | SeveralRow | TextRow

/**
 * All values are kept as the text that was typed or the value that was chosen. Absent: not answered yet. Null: left out on
 * purpose.
 */
export type RowValues = Readonly<Record<string, string | null>>

/** The value that means none of several. */
export const noneOfThem = 'none'

/** What is wrong with the current value and what is allowed; `undefined` if nothing is wrong or nothing is typed. */
export const commonFault = (row: CommonRow, value: string | null | undefined): string | undefined => {
  if (value === null || value === undefined || value === '') return undefined
  if (row.kind !== 'text' && row.kind !== 'number') return undefined
  const fault = row.fault?.(value)
  if (fault !== undefined || row.kind === 'text') return fault
  const number = numberFrom(value)
  if (number === null) return undefined
  return number < row.low || number > row.high ? outOfRange(value, row.unit, row.low, row.high) : undefined
}

/** What a row says of its value; `null` while it is not answered. */
export const rowWords = (row: CommonRow, value: string | null | undefined): string | null => {
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
