import { pipeline, Readable } from 'node:stream'
import { setImmediate } from 'node:timers/promises'
import { stringify } from 'csv-stringify'
import { type CsvTable, cellsOf, type Values } from './csv-table.ts'
import { guardFormula } from './formula-guard.ts'

/** So many rows are written before anything else that the service has to do gets its turn. */
const rowsAtOnce = 100

type Rows<Row> = Iterable<Row> | AsyncIterable<Row>

/**
 * Records as a CSV file, piece by piece while they are read: UTF-8 with a byte-order mark (spreadsheet programs guess another
 * encoding without one), lines ended by CR and LF, and no cell that a spreadsheet program would run.
 */
export const csvPieces = <Row extends Values>(
  table: Pick<CsvTable<Row>, 'columns'>,
  rows: Rows<Row>,
): AsyncIterable<Uint8Array> =>
  pipeline(
    Readable.from(recordsOf(table, rows)),
    stringify({ bom: true, record_delimiter: 'windows' }),
    // Whoever reads the pieces is told of the fault; the callback is only for those who read none.
    () => undefined,
  )

/** The same as one. */
export const writeCsv = async <Row extends Values>(
  table: CsvTable<Row>,
  rows: Rows<Row>,
): Promise<Uint8Array> => {
  const pieces: Uint8Array[] = []
  for await (const piece of csvPieces(table, rows)) pieces.push(piece)
  return Buffer.concat(pieces)
}

async function* recordsOf<Row extends Values>({ columns }: Pick<CsvTable<Row>, 'columns'>, rows: Rows<Row>) {
  const cells = cellsOf(columns)
  yield cells.map(({ name }) => name)
  let written = 0
  for await (const row of rows) {
    yield cells.map(({ name, cell }) => guardFormula(cell.write(row[name])))
    if (written % rowsAtOnce === 0) await setImmediate()
    written += 1
  }
}
