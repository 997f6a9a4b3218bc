import type { CsvFault } from '@bayledger/contract/csv'
import type { InstrumentContent } from '@bayledger/contract/instruments'
import type { CsvTable } from '../../../core/csv/csv-table.ts'
import { recordCsv } from '../../../core/csv/record-csv.ts'
import { cellWords } from '../../../words/csv-words.ts'
import { registerCellWords } from '../../../words/doubt-words.ts'
import { doubtsOf } from '../policy.ts'
import * as store from '../store.ts'
import {
  columnOf,
  type InstrumentRow,
  instrumentColumns,
  instrumentOfRow,
  rowOfInstrument,
} from './instrument-columns.ts'

type Known = {
  /** The id of each place by its name. */
  readonly places: ReadonlyMap<string, string>
  /** YYYY-MM-DD, UTC. */
  readonly today: string
}

const tableFor = (known: Known): CsvTable<InstrumentRow> => ({
  columns: instrumentColumns,
  key: ['code'],
  check: (row, before) => faultsOf(row, before, known),
})

/** What is wrong with a row. What is likely a slip is refused as well, unless it stands in the register already. */
const faultsOf = (
  row: InstrumentRow,
  before: InstrumentRow | null,
  { places, today }: Known,
): readonly CsvFault[] => {
  const locationId = places.get(row.place)
  if (locationId === undefined)
    return [{ column: 'place', found: row.place, ...cellWords.noPlace([...places.keys()]) }]
  if (before !== null && before.kind !== row.kind)
    return [{ column: 'kind', found: row.kind, ...registerCellWords.sameKind }]
  const read = instrumentOfRow(row, locationId)
  if (!read.success)
    return read.error.issues.map((issue) => {
      const column = columnOf[String(issue.path[0])] ?? 'code'
      return { column, found: String(row[column] ?? ''), ...registerCellWords.cannotBe }
    })
  return doubtsOf(read.data, today).flatMap(({ field, found, allowed }) => {
    const column = columnOf[field] ?? 'code'
    return before !== null && before[column] === row[column]
      ? []
      : [{ column, found, ...registerCellWords.doubtful(allowed) }]
  })
}

const rowsOf = (stored: readonly store.KeptInstrument[], places: Known['places']) => {
  const names = new Map([...places].map(([name, id]) => [id, name]))
  return stored.map((kept) => ({
    row: rowOfInstrument(kept.content, names.get(kept.content.locationId) ?? ''),
    stored: kept,
  }))
}

/** Every wrench and gauge, as a CSV file and back. An instrument is known by its code. */
export const instrumentsCsv = recordCsv<InstrumentRow, InstrumentContent>({
  store: store.instrumentRecords,
  list: async (from, { shopId, clock }) => {
    const [places, stored] = await Promise.all([
      store.listPlaceNames(from, shopId),
      store.listInstruments(from, shopId),
    ])
    return {
      table: tableFor({ places, today: clock.now().toISOString().slice(0, 10) }),
      rows: rowsOf(stored, places),
      contentOf: (row) => {
        const read = instrumentOfRow(row, places.get(row.place) ?? '')
        if (!read.success) throw new Error('a row that was planned cannot be read')
        return read.data
      },
    }
  },
})
