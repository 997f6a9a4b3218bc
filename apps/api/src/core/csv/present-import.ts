import { type CsvApplied, type CsvApply, type CsvPreview, mostCsvRowsListed } from '@bayledger/contract/csv'
import { AppError } from '../app-error.ts'
import type { ImportPlan, PlannedRow } from './plan-import.ts'

type What = PlannedRow<unknown, unknown>['what']

/** The rows of a plan of one sort. */
export const plannedRows = <Row, Stored, const W extends What>(
  { rows }: ImportPlan<Row, Stored>,
  what: W,
): Extract<PlannedRow<Row, Stored>, { readonly what: W }>[] =>
  rows.filter((row): row is Extract<PlannedRow<Row, Stored>, { readonly what: W }> => row.what === what)

/** How many rows of each sort there are: what applying the plan does. */
export const importCounts = ({ rows }: ImportPlan<unknown, unknown>): CsvApplied => {
  const counts = { added: 0, changed: 0, same: 0, refused: 0 }
  for (const { what } of rows) counts[what] += 1
  return counts
}

/** A plan as it is shown before it is applied. */
export const presentPreview = (plan: ImportPlan<unknown, unknown>): CsvPreview => ({
  digest: plan.digest,
  counts: importCounts(plan),
  added: plannedRows(plan, 'added')
    .slice(0, mostCsvRowsListed)
    .map(({ number, name }) => ({ row: number, name })),
  changed: plannedRows(plan, 'changed')
    .slice(0, mostCsvRowsListed)
    .map(({ number, name, fields }) => ({ row: number, name, fields: [...fields] })),
  refused: plannedRows(plan, 'refused')
    .slice(0, mostCsvRowsListed)
    .map(({ number, name, faults }) => ({ row: number, name, faults: [...faults] })),
})

/**
 * Refuses to apply what was not shown (`CSV_PREVIEW_STALE`), or a file with refused rows where the person wants all of
 * it or nothing (`CSV_ROWS_REFUSED`).
 */
export const refuseUnlessShown = (
  plan: ImportPlan<unknown, unknown>,
  { digest, refused }: CsvApply,
): void => {
  if (plan.digest !== digest) throw new AppError({ code: 'CSV_PREVIEW_STALE' })
  const count = importCounts(plan).refused
  if (refused === 'stop' && count > 0) throw new AppError({ code: 'CSV_ROWS_REFUSED', count })
}
