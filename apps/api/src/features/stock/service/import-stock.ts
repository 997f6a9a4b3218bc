import { v7 as newId } from 'uuid'
import type { CsvTable } from '../../../core/csv/csv-table.ts'
import { inPortions, listCsv } from '../../../core/csv/list-csv.ts'
import { plannedRows } from '../../../core/csv/present-import.ts'
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

/**
 * Every line of the stock lists, as a CSV file and back: new lines, a version of each line that changes, and a count where
 * another number is on hand than the list says.
 */
export const stockCsv = listCsv({
  list: async (from, { shopId }) => {
    const { places, rows } = await read(from, shopId)
    return { places, table: tableFor(places), rows }
  },
  lock: store.lockLines,
  put: async (tx, { shopId }, { plan, list: { places }, actor: { staffId }, at, wrote }) => {
    const by = { staffId, at }
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
    await inPortions(added, { wrote }, (some) =>
      store.writeLines(tx, shopId, { added: some, changed: [] }, by),
    )
    await inPortions(changed, { wrote, before: added.length }, (some) =>
      store.writeLines(tx, shopId, { added: [], changed: some }, by),
    )
  },
})
