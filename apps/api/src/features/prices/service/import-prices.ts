import type { CsvFault } from '@bayledger/contract/csv'
import type { PriceBookContent } from '@bayledger/reckoning/money/price-book'
import { AppError } from '../../../core/app-error.ts'
import type { CsvTable } from '../../../core/csv/csv-table.ts'
import { listCsv } from '../../../core/csv/list-csv.ts'
import { plannedRows } from '../../../core/csv/present-import.ts'
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

/** The price book as a CSV file and back: what a file changes is one version. RECORD_NOT_FOUND where no prices are set. */
export const pricesCsv = listCsv({
  list: async (from, { shopId }) => {
    const kept = await newest(from, shopId)
    if (kept === null) throw new AppError({ code: 'RECORD_NOT_FOUND', what: 'price-book' })
    return {
      kept,
      table: tableFor(kept.content),
      rows: rowsOfPrices(kept.content).map((row) => ({ row, stored: row })),
    }
  },
  lock: store.lockPrices,
  put: async (tx, _of, { plan, list: { kept }, actor: { staffId }, at, wrote }) => {
    const rows = [...plannedRows(plan, 'added'), ...plannedRows(plan, 'changed')].map(({ row }) => row)
    if (rows.length === 0) return
    await writeVersion(tx, { ...kept, content: withRows(kept.content, rows) }, { staffId, at })
    wrote(rows.length)
  },
})
