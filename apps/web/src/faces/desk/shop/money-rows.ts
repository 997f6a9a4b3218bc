import { figureIn, type RecordRow, textIn } from '../../../ui/record/record-rows.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'

type Given = { readonly hint?: string; readonly optional?: string; readonly part?: string }

/** A row of dollars and cents. */
export const dollarsRow = (key: string, label: string, given: Given = {}): RecordRow => ({
  kind: 'number',
  key,
  label,
  unit: '$',
  low: 0,
  high: 100_000,
  decimals: 2,
  ...given,
})

/** A row of a percentage, to a thousandth. */
export const percentRow = (
  key: string,
  label: string,
  given: Given & { readonly low?: number; readonly high?: number } = {},
): RecordRow => ({ kind: 'number', key, label, unit: '%', low: 0, high: 100, decimals: 3, ...given })

/** Cents as dollars are typed; empty for none. */
export const dollarText = (cents: number | null): string => (cents === null ? '' : (cents / 100).toFixed(2))

/** Thousandths of a percent as a percentage is typed. */
export const percentText = (thousandths: number): string => String(thousandths / 1_000)

/** The cents of a row of dollars; `null` where it was left empty. */
export const centsIn = (values: RowValues, key: string): number | null =>
  textIn(values, key) === '' ? null : Math.round((figureIn(values, key) ?? 0) * 100)

export const thousandthsIn = (values: RowValues, key: string): number =>
  Math.round((figureIn(values, key) ?? 0) * 1_000)
