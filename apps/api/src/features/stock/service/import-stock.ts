import type { CsvApplied, CsvPreview } from '@bayledger/contract/csv'
import { v7 as newId } from 'uuid'
import type { StaffActor } from '../../../core/actor.ts'
import { applyImport, type GivenImport, type ImportKey } from '../../../core/csv/apply-import.ts'
import type { CsvTable } from '../../../core/csv/csv-table.ts'
import { type ImportPlan, planImport } from '../../../core/csv/plan-import.ts'
import { plannedRows, presentPreview } from '../../../core/csv/present-import.ts'
import { writeCsv } from '../../../core/csv/write-csv.ts'
import type { Deps } from '../../../deps.ts'
import { cellWords } from '../../../words/csv-words.ts'
import * as store from '../store/write-lines.ts'
import { contentOfRow, rowOfStock, type StockRow, stockColumns } from './stock-columns.ts'

type Places = ReadonlyMap<string, string>

/** `places`: the id of each place by its name. */
const tableFor = (places: Places): CsvTable<StockRow> => ({
  columns: stockColumns,
  key: ['place', 'part_number'],
  check: (row) =>
    places.has(row.place)
      ? []
      : [{ column: 'place', found: row.place, ...cellWords.noPlace([...places.keys()]) }],
})

const read = async (from: store.Tx, shopId: string) => {
  const [places, lines] = await Promise.all([
    store.listPlaceNames(from, shopId),
    store.listLines(from, shopId),
  ])
  const names = new Map([...places].map(([name, id]) => [id, name]))
  const rows = lines.map((line) => ({
    row: rowOfStock(line.content, line.onHand, names.get(line.content.locationId) ?? ''),
    stored: line,
  }))
  return { places, rows }
}

/** Every line of the stock lists, as a CSV file. */
export const exportStock = async (deps: Deps): Promise<Uint8Array> => {
  const { places, rows } = await read(deps.prisma, deps.shopId)
  return writeCsv(
    tableFor(places),
    rows.map(({ row }) => row),
  )
}

const planFor = async (
  from: store.Tx,
  shopId: string,
  bytes: Uint8Array,
): Promise<{ plan: ImportPlan<StockRow, store.StockLine>; places: Places }> => {
  const { places, rows } = await read(from, shopId)
  return { plan: await planImport(tableFor(places), bytes, rows), places }
}

export const previewStock = async (deps: Deps, bytes: Uint8Array): Promise<CsvPreview> =>
  presentPreview((await planFor(deps.prisma, deps.shopId, bytes)).plan)

/**
 * Writes what the preview showed, in one transaction: new lines, a version of each line that changes, and a count where
 * another number is on hand than the list says.
 */
export const importStock = (
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
      await store.lockLines(tx, deps.shopId)
      return planFor(tx, deps.shopId, bytes)
    },
    async (tx, { plan, places }, by) => {
      const content = (row: StockRow) => contentOfRow(row, places.get(row.place) ?? '')
      const added = plannedRows(plan, 'added').map(({ row }) => ({
        id: newId(),
        version: 1,
        content: content(row),
        counted: row.on_hand,
      }))
      const changed = plannedRows(plan, 'changed').map(({ row, stored, fields }) => ({
        id: stored.id,
        version: fields.every(({ column }) => column === 'on_hand') ? stored.version : stored.version + 1,
        content: content(row),
        counted: row.on_hand - stored.onHand,
        before: stored,
      }))
      await store.writeLines(tx, deps.shopId, { added, changed }, by)
    },
  )
