import { recordFaults, tooLong } from '../../lib/fault-words.ts'
import { numberFrom } from '../number-text.ts'
import {
  type ChoiceRow,
  type CommonRow,
  commonFault,
  type NumberRow,
  type RowBase,
  type RowValues,
  rowWords,
  type SeveralRow,
  type TextRow,
} from '../rows/rows.ts'

export type DayRow = RowBase & { readonly kind: 'day'; readonly hint?: string }

/**
 * One row of a record's editor. Its key is the path of the field in the content ("lawProfile.retentionYears"), so that what
 * the server says of a field is shown at its row. A yes or no is a choice of two: `yesNoRow`.
 */
export type RecordRow = (
  | (NumberRow & {
      /** Decimals that may be typed; absent: whole numbers only. */
      readonly decimals?: number
    })
  | ChoiceRow
  | SeveralRow
  | (TextRow & {
      /** Most letters; 200 where absent. */
      readonly most?: number
      /** A field of so many lines. */
      readonly lines?: number
      /** The text as others will read it, from what is typed so far. */
      readonly preview?: (typed: string) => string
    })
  | DayRow
) & {
  /** The heading under which this row and those after it stand. */
  readonly part?: string
}

/** A yes or no, each in the words of the row. */
export const yesNoRow = (
  key: string,
  label: string,
  words: { readonly yes: string; readonly no: string },
  hint?: string,
): RecordRow => ({
  ...(hint === undefined ? {} : { hint }),
  kind: 'choice',
  key,
  label,
  options: [
    { value: 'yes', label: words.yes },
    { value: 'no', label: words.no },
  ],
})

export const yesNo = (value: boolean): string => (value ? 'yes' : 'no')

/** What is wrong with a row as it would be saved now, and what to do; `undefined` if nothing is. */
export const recordFault = (row: RecordRow, value: string | null | undefined): string | undefined => {
  const typed = (value ?? '').trim()
  if (row.kind === 'several') return undefined
  if (typed === '') return row.optional === undefined ? recordFaults.missing : undefined
  switch (row.kind) {
    case 'text':
      return tooLong(typed, row.most ?? 200) ?? commonFault(row, typed)
    case 'number':
      return figureFault(typed, row.decimals ?? 0) ?? commonFault(row, typed)
    case 'day':
      return isDay(typed) ? undefined : recordFaults.noDay
    case 'choice':
      return row.options.some((option) => option.value === typed) ? undefined : recordFaults.notOffered
  }
}

const figureFault = (typed: string, decimals: number): string | undefined => {
  if (numberFrom(typed) === null) return recordFaults.noNumber
  const after = (typed.split('.')[1] ?? '').length
  if (after <= decimals) return undefined
  return decimals === 0 ? recordFaults.whole : recordFaults.decimals(decimals)
}

const isDay = (typed: string): boolean =>
  /^\d{4}-\d{2}-\d{2}$/.test(typed) && !Number.isNaN(Date.parse(`${typed}T00:00:00Z`))

/** Every row that is at fault, by its key. */
export const recordFaultsOf = (
  rows: readonly RecordRow[],
  values: RowValues,
): Readonly<Record<string, string>> =>
  Object.fromEntries(
    rows.flatMap((row) => {
      const fault = recordFault(row, values[row.key])
      return fault === undefined ? [] : [[row.key, fault]]
    }),
  )

/** The figure of a row that is not at fault; `null` where it was left empty. */
export const figureIn = (values: RowValues, key: string): number | null => numberFrom(values[key] ?? '')

/** The text of a row without blanks around it; empty where it was left empty. */
export const textIn = (values: RowValues, key: string): string => (values[key] ?? '').trim()

/** The chosen ones of a row of several. */
export const severalIn = (values: RowValues, key: string): string[] =>
  textIn(values, key)
    .split(',')
    .filter((one) => one !== '')

/** A row's value in words, for a history and for two versions side by side. */
export const recordWords = (row: RecordRow, value: string | null | undefined): string => {
  const typed = (value ?? '').trim()
  if (typed === '') return row.kind === 'several' ? row.noneWord : (row.optional ?? 'empty')
  if (row.kind === 'day') return dayWords(typed)
  return rowWords(row satisfies CommonRow, typed) ?? typed
}

const dayWords = (day: string): string =>
  isDay(day)
    ? new Intl.DateTimeFormat('en-US', { timeZone: 'UTC', dateStyle: 'medium' }).format(
        new Date(`${day}T00:00:00Z`),
      )
    : day

export type RowChange = { readonly row: RecordRow; readonly before: string; readonly after: string }

/** The rows whose value differs, each in words. */
export const changesBetween = (
  rows: readonly RecordRow[],
  before: RowValues,
  after: RowValues,
): RowChange[] =>
  rows
    .filter(({ key }) => textIn(before, key) !== textIn(after, key))
    .map((row) => ({
      row,
      before: recordWords(row, before[row.key]),
      after: recordWords(row, after[row.key]),
    }))

type Field = { readonly field: string; readonly found: string; readonly allowed: string }

/** The row that a field of the server's reply belongs to: the one whose key is the field's path, or leads to it. */
export const rowOfField = (rows: readonly RecordRow[], field: string): RecordRow | undefined => {
  const path = field.replace(/^content\./, '')
  return rows.find(({ key }) => key === path || path.startsWith(`${key}.`))
}

/** What the server says of fields, at their rows, and the fields that no row stands for. */
export const placedFields = (
  rows: readonly RecordRow[],
  fields: readonly Field[],
): { readonly atRows: Readonly<Record<string, string>>; readonly elsewhere: readonly Field[] } => ({
  atRows: Object.fromEntries(
    fields.flatMap(({ field, found, allowed }) => {
      const row = rowOfField(rows, field)
      return row === undefined ? [] : [[row.key, recordFaults.served(found, allowed)]]
    }),
  ),
  elsewhere: fields.filter(({ field }) => rowOfField(rows, field) === undefined),
})

/** Whether a text is found in what a list shows of a record; every word of it has to be. */
export const isFoundIn = (searched: string, shown: readonly string[]): boolean => {
  const text = shown.join(' ').toLowerCase()
  return searched
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word))
}
