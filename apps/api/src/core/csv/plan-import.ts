import { createHash } from 'node:crypto'
import { setImmediate } from 'node:timers/promises'
import type { CsvFault } from '@bayledger/contract/csv'
import { rowWords } from '../../words/csv-words.ts'
import { type Cells, type CsvTable, cellsOf, type Values } from './csv-table.ts'
import type { TellProgress } from './import-progress.ts'
import { type ReadRow, readCsv } from './read-csv.ts'

/** A record as it is stored now, in the columns of its table, with whatever its feature needs to write it. */
export type StoredRow<Row, Stored> = { readonly row: Row; readonly stored: Stored }

export type PlannedRow<Row, Stored> = { readonly number: number; readonly name: string } & (
  | { readonly what: 'added'; readonly row: Row }
  | {
      readonly what: 'changed'
      readonly row: Row
      readonly stored: Stored
      readonly fields: readonly ChangedField[]
    }
  | { readonly what: 'same' }
  | { readonly what: 'refused'; readonly faults: readonly CsvFault[] }
)

export type ChangedField = { readonly column: string; readonly before: string; readonly after: string }

/** `digest`: SHA-256 of all that the plan would do and refuse. */
export type ImportPlan<Row, Stored> = {
  readonly rows: readonly PlannedRow<Row, Stored>[]
  readonly digest: string
}

/** So many rows are compared before anything else that the service has to do gets its turn. */
const rowsAtOnce = 50

/**
 * What importing a file would do to the records as they are stored. A record that the file does not name stays as it
 * is. Throws `CSV_UNREADABLE`.
 */
export const planImport = async <Row extends Values, Stored>(
  table: CsvTable<Row>,
  bytes: Uint8Array,
  stored: readonly StoredRow<Row, Stored>[],
  tell: TellProgress = () => undefined,
): Promise<ImportPlan<Row, Stored>> => {
  const known = new Map<string, Known<Row, Stored>>()
  for (const [index, one] of stored.entries()) {
    const cells = writeRow(table, one.row)
    known.set(keyOf(table, cells), { ...one, cells })
    if (index % rowsAtOnce === 0) await setImmediate()
  }
  const seen = new Map<string, number>()
  const rows: PlannedRow<Row, Stored>[] = []
  const digest = createHash('sha256')
  const file = await readCsv(bytes, Object.keys(table.columns))
  for (const [index, read] of file.entries()) {
    const planned = planRow(table, read, known, seen)
    rows.push(planned)
    digest.update(`${JSON.stringify(shownOf(planned))}\n`)
    if (index % rowsAtOnce !== 0) continue
    tell({ step: 'comparing', done: index + 1, of: file.length })
    await setImmediate()
  }
  return { rows, digest: digest.digest('hex') }
}

type Known<Row, Stored> = StoredRow<Row, Stored> & { readonly cells: Cells }

const planRow = <Row extends Values, Stored>(
  table: CsvTable<Row>,
  { row: number, cells, count }: ReadRow,
  known: ReadonlyMap<string, Known<Row, Stored>>,
  seen: Map<string, number>,
): PlannedRow<Row, Stored> => {
  const called = table.called ?? table.key
  const name = cells === null ? '' : called.map((column) => cells[column]?.trim() ?? '').join(' ')
  const refused = (faults: readonly CsvFault[]) => ({ number, name, what: 'refused', faults }) as const
  if (cells === null) return refused([wholeRow(rowWords.cellCount(count, Object.keys(table.columns).length))])
  const read = readRow(table, cells)
  if ('faults' in read) return refused(read.faults)
  const { row } = read
  const after = writeRow(table, row)
  const key = keyOf(table, after)
  const earlier = seen.get(key)
  if (earlier !== undefined) return refused([wholeRow(rowWords.sameAs(earlier))])
  seen.set(key, number)
  const old = known.get(key)
  const fields = old ? changedFields(table, old.cells, after) : []
  if (old && fields.length === 0) return { number, name, what: 'same' }
  const faults = table.check?.(row, old?.row ?? null) ?? []
  if (faults.length > 0) return refused(faults)
  return old
    ? { number, name, what: 'changed', row, stored: old.stored, fields }
    : { number, name, what: 'added', row }
}

const changedFields = <Row extends Values>(
  table: CsvTable<Row>,
  before: Cells,
  after: Cells,
): ChangedField[] =>
  Object.keys(table.columns)
    .filter((column) => before[column] !== after[column] && !table.notKept?.includes(column))
    .map((column) => ({ column, before: before[column] ?? '', after: after[column] ?? '' }))

/** What a person was shown of a row; of the stored record that is the fields that change. */
const shownOf = <Row, Stored>(planned: PlannedRow<Row, Stored>): unknown => {
  if (planned.what !== 'changed') return planned
  const { stored: _stored, ...shown } = planned
  return shown
}

const wholeRow = (fault: { readonly reason: string; readonly do: string }): CsvFault => ({
  column: null,
  found: '',
  ...fault,
})

const keyOf = <Row extends Values>(table: CsvTable<Row>, cells: Cells): string =>
  JSON.stringify(table.key.map((column) => cells[column]?.toLowerCase()))

const writeRow = <Row extends Values>(table: CsvTable<Row>, row: Row): Cells =>
  Object.fromEntries(cellsOf(table.columns).map(({ name, cell }) => [name, cell.write(row[name])]))

const readRow = <Row extends Values>(
  table: CsvTable<Row>,
  cells: Cells,
): { readonly row: Row } | { readonly faults: readonly CsvFault[] } => {
  const values: { [column: string]: unknown } = {}
  const faults: CsvFault[] = []
  for (const { name, cell } of cellsOf(table.columns)) {
    const found = cells[name] ?? ''
    const read = cell.read(found)
    if ('value' in read) values[name] = read.value
    else faults.push({ column: name, found: shortened(found), ...read })
  }
  // Each column was read by its own cell, so that the values are a row's.
  return faults.length > 0 ? { faults } : { row: values as Row }
}

const shortened = (text: string): string => (text.length > 80 ? `${text.slice(0, 77)}...` : text)
