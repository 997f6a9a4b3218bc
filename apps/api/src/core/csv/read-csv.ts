import { Readable } from 'node:stream'
import { setImmediate } from 'node:timers/promises'
import { mostCsvRows } from '@bayledger/contract/csv'
import { CsvError, parse } from 'csv-parse'
import { parse as parseAtOnce } from 'csv-parse/sync'
import { AppError } from '../app-error.ts'
import type { Cells } from './csv-table.ts'
import { utf8Of } from './decode-csv.ts'
import { unguardFormula } from './formula-guard.ts'

/** A row as a spreadsheet numbers it; the header is row 1. `cells` is null where their number is not the header's. */
export type ReadRow = { readonly row: number; readonly cells: Cells | null; readonly count: number }

/** Our own first lines are a tenth of this; of a longer one no name is looked for. */
const longestHeaderBytes = 16 * 1024

/** So many bytes are parsed before anything else that the service has to do gets its turn. */
const sliceBytes = 32 * 1024

/**
 * The rows of a CSV file (RFC 4180) with these columns in any order. A byte-order mark, line ends of any sort and
 * semicolons or tabs for commas are understood. Throws `CSV_UNREADABLE` where no row can be told from another.
 */
export const readCsv = async (bytes: Uint8Array, columns: readonly string[]): Promise<ReadRow[]> => {
  const text = utf8Of(bytes)
  const separator = separatorOf(text, columns)
  const parser = parse({ bom: true, delimiter: separator, relax_column_count: true, info: false })
  const rows: ReadRow[] = []
  let header: readonly string[] | null = null
  let row = 0
  try {
    for await (const record of Readable.from(slicesOf(text)).pipe(parser) as AsyncIterable<string[]>) {
      row += 1
      if (header === null) header = headerOf(record, columns)
      else if (record.some((cell) => cell.trim() !== '')) rows.push(rowOf(row, record, header))
      if (rows.length > mostCsvRows)
        throw new AppError({ code: 'CSV_UNREADABLE', why: 'too-many-rows', most: mostCsvRows })
    }
  } catch (cause) {
    if (cause instanceof CsvError)
      throw new AppError({ code: 'CSV_UNREADABLE', why: 'quotation-marks', row: row + 1 }, { cause })
    throw cause
  }
  if (header === null) throw new AppError({ code: 'CSV_UNREADABLE', why: 'empty' })
  return rows
}

async function* slicesOf(bytes: Uint8Array) {
  for (let at = 0; at < bytes.length; at += sliceBytes) {
    yield bytes.subarray(at, at + sliceBytes)
    await setImmediate()
  }
}

/** The separator under which most names of the first line are ours; a comma where none is. */
const separatorOf = (bytes: Uint8Array, columns: readonly string[]): string => {
  const end = bytes.findIndex((byte) => byte === 0x0a || byte === 0x0d)
  const line = bytes.subarray(0, end === -1 ? bytes.length : end)
  if (line.length > longestHeaderBytes) {
    const unknown = [new TextDecoder().decode(line.subarray(0, 40))]
    throw new AppError({ code: 'CSV_UNREADABLE', why: 'columns', missing: columns, unknown, twice: [] })
  }
  const known = new Set(columns)
  const scored = [',', ';', '\t'].map((delimiter) => ({
    delimiter,
    ours: firstRecord(line, delimiter).filter((name) => known.has(nameOf(name))).length,
  }))
  return scored.reduce((best, one) => (one.ours > best.ours ? one : best)).delimiter
}

const firstRecord = (line: Uint8Array, delimiter: string): string[] =>
  parseAtOnce(line, { bom: true, delimiter, to: 1, relax_quotes: true, relax_column_count: true })[0] ?? []

const nameOf = (text: string): string => text.trim().toLowerCase()

const headerOf = (record: readonly string[], columns: readonly string[]): string[] => {
  const names = record.map(nameOf)
  if (names.every((name) => name === '')) throw new AppError({ code: 'CSV_UNREADABLE', why: 'empty' })
  const missing = columns.filter((column) => !names.includes(column))
  const unknown = names.filter((name) => !columns.includes(name))
  const twice = names.filter((name, index) => names.indexOf(name) !== index && columns.includes(name))
  if (missing.length + unknown.length + twice.length > 0)
    throw new AppError({ code: 'CSV_UNREADABLE', why: 'columns', missing, unknown, twice })
  return names
}

const rowOf = (row: number, record: readonly string[], header: readonly string[]): ReadRow => ({
  row,
  count: record.length,
  cells:
    record.length === header.length
      ? Object.fromEntries(header.map((name, index) => [name, unguardFormula(record[index] ?? '')]))
      : null,
})
