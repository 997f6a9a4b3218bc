import { isDeepStrictEqual } from 'node:util'
import type { CsvFault } from '@bayledger/contract/csv'
import { PlaceContent } from '@bayledger/contract/places'
import type { CsvTable } from '../../../core/csv/csv-table.ts'
import { recordCsv } from '../../../core/csv/record-csv.ts'
import { refusedCells } from '../../../core/csv/refused-cells.ts'
import { registerRowWords } from '../../../words/csv-words.ts'
import { doubtsOf } from '../policy.ts'
import * as store from '../store.ts'
import { type PlaceRow, placeColumns } from './place-columns.ts'
import { placeRecords } from './place-records.ts'
import { columnOf, placeOfRow, rowOfPlace } from './place-row.ts'

const table: CsvTable<PlaceRow> = {
  columns: placeColumns,
  key: ['place'],
  check: (row, before) => {
    const refused = [...refusedCells(PlaceContent, placeOfRow(row), columnOf, row), ...idleFaults(row)]
    return refused.length > 0 ? refused : doubtfulCells(row, before)
  },
}

/** A figure that the row's kind of overrun does not take would be lost without a word. */
const idleFaults = (row: PlaceRow): readonly CsvFault[] => {
  const kept = rowOfPlace(placeOfRow(row))
  return (['overrun_percent', 'overrun_amount', 'overrun_at_most'] as const)
    .filter((column) => row[column] !== null && kept[column] === null)
    .map((column) => ({ column, found: String(row[column]), ...registerRowWords.takesNone(row.overrun) }))
}

/** What the page would ask about is refused, unless it is so already: nobody answers a file's question. */
const doubtfulCells = (row: PlaceRow, before: PlaceRow | null): readonly CsvFault[] =>
  doubtsOf(placeOfRow(row)).flatMap(({ field, found, allowed }) => {
    const column = columnOf[field] ?? 'place'
    return before !== null && isDeepStrictEqual(before[column], row[column])
      ? []
      : [{ column, found, ...registerRowWords.askedOnThePage(allowed) }]
  })

/** The shop's places, as a CSV file and back. A place is known by its name. */
export const placesCsv = recordCsv<PlaceRow, PlaceContent>({
  store: placeRecords,
  list: async (from, { shopId }) => ({
    table,
    rows: (await store.listPlaces(from, shopId)).map((kept) => ({
      row: rowOfPlace(kept.content),
      stored: kept,
    })),
    contentOf: (row) => PlaceContent.parse(placeOfRow(row)),
  }),
})
