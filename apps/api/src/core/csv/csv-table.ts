import type { CsvFault } from '@bayledger/contract/csv'
import type { Cell } from './cells.ts'

/** One row's texts by column, as they are in the file, without the guard against formulas. */
export type Cells = Readonly<Record<string, string>>

/** The values of a row by column. */
export type Values = Readonly<Record<string, unknown>>

/** Our own documented columns in their order, each with how its cell is read and written. */
export type Columns<Row extends Values> = { readonly [Column in keyof Row & string]: Cell<Row[Column]> }

/** The row that some columns hold. */
export type RowOf<Shape> = {
  readonly [Column in keyof Shape]: Shape[Column] extends Cell<infer Value> ? Value : never
}

/** What one CSV file holds. A row is read and written by the same cells, so that an export comes back as the same. */
export type CsvTable<Row extends Values> = {
  readonly columns: Columns<Row>
  /** The columns that name a record; two rows of one file may not have the same. */
  readonly key: readonly (keyof Row & string)[]
  /** The columns by which a person knows a record, where its key is an id. */
  readonly called?: readonly (keyof Row & string)[]
  /** Columns that ask something of the person who imports and are not kept: they make no row a changed one. */
  readonly notKept?: readonly (keyof Row & string)[]
  /** What is wrong with a row whose cells can be read one by one; `before` is the record as it is stored. */
  readonly check?: (row: Row, before: Row | null) => readonly CsvFault[]
}

type AnyCell = { readonly name: string; readonly cell: Cell<unknown> }

/** The columns one by one; what a cell reads is what it writes, whatever that is. */
export const cellsOf = <Row extends Values>(columns: Columns<Row>): readonly AnyCell[] =>
  Object.entries(columns).map(([name, cell]) => ({ name, cell: cell as Cell<unknown> }))
