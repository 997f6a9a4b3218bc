import type { CsvFault } from '@bayledger/contract/csv'
import type { TabletContent } from '@bayledger/contract/tablets'
import { dayCell, textCell, yesNoCell } from '../../../core/csv/cells.ts'
import type { CsvTable, RowOf } from '../../../core/csv/csv-table.ts'
import { recordCsv } from '../../../core/csv/record-csv.ts'
import { cellWords, registerRowWords } from '../../../words/csv-words.ts'
import * as store from '../store.ts'

/** What a file of tablets holds. `name` and `place` may be changed in it; the others say which tablet it is. */
const tabletColumns = {
  tablet: textCell(36),
  name: textCell(40),
  place: textCell(80),
  enrolled_on: dayCell(),
  put_out: yesNoCell(),
}
type TabletRow = RowOf<typeof tabletColumns>

/** `places`: the id of each place by its name. */
const tableFor = (places: ReadonlyMap<string, string>): CsvTable<TabletRow> => ({
  columns: tabletColumns,
  key: ['tablet'],
  called: ['name'],
  check: (row, before) => {
    if (before === null) return [{ column: 'tablet', found: row.tablet, ...registerRowWords.noSuchTablet }]
    return [
      ...(places.has(row.place)
        ? []
        : [{ column: 'place', found: row.place, ...cellWords.noPlace([...places.keys()]) }]),
      ...changedFacts(row, before),
    ]
  },
})

const changedFacts = (row: TabletRow, before: TabletRow): readonly CsvFault[] =>
  (['enrolled_on', 'put_out'] as const)
    .filter((column) => row[column] !== before[column])
    .map((column) => {
      const [found, stored] = [row, before].map((one) => textOf(one[column]))
      return { column, found: found ?? '', ...registerRowWords.tabletSays(stored ?? '') }
    })

const textOf = (value: string | boolean): string => (typeof value === 'string' ? value : value ? 'yes' : 'no')

/** The shop's tablets, as a CSV file; a file that comes back renames and moves them. */
export const tabletsCsv = recordCsv<TabletRow, TabletContent>({
  store: store.tabletRecords,
  list: async (from, { shopId }) => {
    const { places, tablets } = await store.listForCsv(from, shopId)
    const names = new Map([...places].map(([name, id]) => [id, name]))
    return {
      table: tableFor(places),
      rows: tablets.map(({ enrolledAt, ...stored }) => ({
        row: {
          tablet: stored.id,
          name: stored.content.name,
          place: names.get(stored.content.locationId) ?? '',
          enrolled_on: enrolledAt.toISOString().slice(0, 10),
          put_out: stored.content.isOut,
        },
        stored,
      })),
      contentOf: ({ name, place, put_out }) => ({
        name,
        locationId: places.get(place) ?? '',
        isOut: put_out,
      }),
    }
  },
})
