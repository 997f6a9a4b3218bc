import { Readable } from 'node:stream'
import { setImmediate } from 'node:timers/promises'
import { stringify } from 'csv-stringify'
import { type CsvTable, cellsOf, type Values } from './csv-table.ts'
import { guardFormula } from './formula-guard.ts'

/** So many rows are written before anything else that the service has to do gets its turn. */
const rowsAtOnce = 100

/**
 * Records as a CSV file: UTF-8 with a byte-order mark (spreadsheet programs guess another encoding without one), lines
 * ended by CR and LF, and no cell that a spreadsheet program would run.
 */
export const writeCsv = async <Row extends Values>(
  table: CsvTable<Row>,
  rows: readonly Row[],
): Promise<Uint8Array> => {
  const writer = stringify({ bom: true, record_delimiter: 'windows' })
  const pieces: Buffer[] = []
  for await (const piece of Readable.from(recordsOf(table, rows)).pipe(writer))
    pieces.push(Buffer.from(piece))
  return Buffer.concat(pieces)
}

async function* recordsOf<Row extends Values>(table: CsvTable<Row>, rows: readonly Row[]) {
  const columns = cellsOf(table.columns)
  yield columns.map(({ name }) => name)
  for (const [index, row] of rows.entries()) {
    yield columns.map(({ name, cell }) => guardFormula(cell.write(row[name])))
    if (index % rowsAtOnce === 0) await setImmediate()
  }
}
