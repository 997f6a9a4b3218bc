import type { CsvApplied, CsvFault, CsvPreview } from '@bayledger/contract/csv'
import type { PriceBookContent } from '@bayledger/reckoning/money/price-book'
import type { StaffActor } from '../../../core/actor.ts'
import { AppError } from '../../../core/app-error.ts'
import { applyImport, type GivenImport, type ImportKey } from '../../../core/csv/apply-import.ts'
import type { CsvTable } from '../../../core/csv/csv-table.ts'
import { planImport } from '../../../core/csv/plan-import.ts'
import { plannedRows, presentPreview } from '../../../core/csv/present-import.ts'
import { writeCsv } from '../../../core/csv/write-csv.ts'
import type { Deps } from '../../../deps.ts'
import { rowWords } from '../../../words/csv-words.ts'
import { doubtsOf } from '../policy.ts'
import { newest, writeVersion } from '../service.ts'
import * as store from '../store.ts'
import { type PriceRow, priceColumns } from './price-columns.ts'
import { faultOfRow, rowsOfPrices, withRows } from './price-rows.ts'

const tableFor = (book: PriceBookContent): CsvTable<PriceRow> => ({
  columns: priceColumns,
  key: ['item'],
  check: (row) => faultsOf(book, row),
})

/** A row that the book's page would ask about is refused here: nobody answers a file's question. */
const faultsOf = (book: PriceBookContent, row: PriceRow): CsvFault[] => {
  const fault = faultOfRow(book, row)
  if (fault === 'no-such-item') return [{ column: 'item', found: row.item, ...rowWords.noSuchPrice }]
  if (fault !== null)
    return [{ column: 'value', found: String(row.value ?? ''), ...rowWords.notAllowed(fault) }]
  const asked = doubtsOf(withRows(book, [row])).filter(
    ({ field }) => !doubtsOf(book).some((known) => known.field === field),
  )
  return asked.map(({ found, allowed }) => ({ column: 'value', found, ...rowWords.askedOnThePage(allowed) }))
}

const planFor = async (tx: Parameters<typeof newest>[0], shopId: string, bytes: Uint8Array) => {
  const kept = await newest(tx, shopId)
  if (kept === null) throw new AppError({ code: 'RECORD_NOT_FOUND', what: 'price-book' })
  const rows = rowsOfPrices(kept.content).map((row) => ({ row, stored: row }))
  return { kept, plan: await planImport(tableFor(kept.content), bytes, rows) }
}

/** The price book as a CSV file. @throws RECORD_NOT_FOUND where the shop has set no prices */
export const exportPrices = async ({ prisma, shopId }: Deps): Promise<Uint8Array> => {
  const kept = await newest(prisma, shopId)
  if (kept === null) throw new AppError({ code: 'RECORD_NOT_FOUND', what: 'price-book' })
  return writeCsv(tableFor(kept.content), rowsOfPrices(kept.content))
}

export const previewPrices = async ({ prisma, shopId }: Deps, bytes: Uint8Array): Promise<CsvPreview> =>
  presentPreview((await planFor(prisma, shopId, bytes)).plan)

/** Writes what the preview showed as one version of the prices. */
export const importPrices = (
  deps: Deps,
  actor: StaffActor,
  key: ImportKey,
  { bytes, apply }: GivenImport,
): Promise<CsvApplied> =>
  applyImport(
    deps,
    actor,
    key,
    apply,
    async (tx) => {
      await store.lockPrices(tx, deps.shopId)
      return planFor(tx, deps.shopId, bytes)
    },
    async (tx, { kept, plan }, by) => {
      const rows = [...plannedRows(plan, 'added'), ...plannedRows(plan, 'changed')].map(({ row }) => row)
      if (rows.length > 0) await writeVersion(tx, { ...kept, content: withRows(kept.content, rows) }, by)
    },
  )
