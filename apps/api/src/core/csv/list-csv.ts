import type { Prisma } from '@bayledger/db/generated/client'
import type { Deps } from '../../deps.ts'
import type { StaffActor } from '../actor.ts'
import { applyImport } from './apply-import.ts'
import type { CsvService } from './csv-service.ts'
import type { CsvTable, Values } from './csv-table.ts'
import type { TellProgress } from './import-progress.ts'
import { type ImportPlan, planImport, type StoredRow } from './plan-import.ts'
import { presentPreview } from './present-import.ts'
import { writeCsv } from './write-csv.ts'

type Tx = Prisma.TransactionClient
export type ListOf = Pick<Deps, 'shopId' | 'clock'>

/** A list as it is stored now, in the columns of its table. */
export type CsvRows<Row extends Values, Stored> = {
  readonly table: CsvTable<Row>
  readonly rows: readonly StoredRow<Row, Stored>[]
  /** The table by which a file is planned anew where its rows are right one by one and not together; `null`: they are. */
  readonly strictly?: (plan: ImportPlan<Row, Stored>) => CsvTable<Row> | null
}

/** What is written of a plan: who imports, when, and whom to say how far it has come. */
export type Importing<Row, Stored, List> = {
  readonly plan: ImportPlan<Row, Stored>
  readonly list: List
  readonly actor: StaffActor
  readonly at: Date
  /** Of all rows that are added or changed, so many are written. */
  readonly wrote: (rows: number) => void
}

type ListCsv<Row extends Values, Stored, List extends CsvRows<Row, Stored>> = {
  /** The list, with whatever else writing it takes. */
  readonly list: (from: Tx, of: ListOf) => Promise<List & CsvRows<Row, Stored>>
  /** Holds what is read for the plan until the transaction ends; what a row locks by itself needs none. */
  readonly lock?: (tx: Tx, shopId: string) => Promise<unknown>
  readonly put: (tx: Tx, of: ListOf, importing: Importing<Row, Stored, List>) => Promise<void>
}

/** A list, written as CSV and read back: planned alike for the preview and, in the transaction that writes, for applying. */
export const listCsv = <Row extends Values, Stored, List extends CsvRows<Row, Stored>>({
  list: read,
  lock,
  put,
}: ListCsv<Row, Stored, List>): CsvService => {
  const planFor = async (from: Tx, of: ListOf, bytes: Uint8Array, tell: TellProgress) => {
    const list = await read(from, of)
    const plan = await planImport(list.table, bytes, list.rows, tell)
    const stricter = list.strictly?.(plan) ?? null
    return { plan: stricter === null ? plan : await planImport(stricter, bytes, list.rows, tell), list }
  }
  return {
    write: async (deps) => {
      const { table, rows } = await read(deps.prisma, deps)
      return writeCsv(
        table,
        rows.map(({ row }) => row),
      )
    },
    preview: async (deps, bytes, tell) =>
      presentPreview((await planFor(deps.prisma, deps, bytes, tell)).plan),
    apply: (deps, actor, key, { bytes, apply }, tell) =>
      applyImport(
        deps,
        actor,
        key,
        apply,
        async (tx) => {
          await lock?.(tx, deps.shopId)
          return planFor(tx, deps, bytes, tell)
        },
        async (tx, { plan, list }, { at }) => {
          const of = plan.rows.filter(({ what }) => what === 'added' || what === 'changed').length
          const wrote = (done: number) => tell({ step: 'writing', done, of })
          wrote(0)
          await put(tx, deps, { plan, list, actor, at, wrote })
        },
      ),
  }
}

/** So many rows are written by one statement before it is said how far the import has come. */
const rowsAtOnce = 500

/** Writes rows in portions, so that it can be said how many are written; `before`: so many were written already. */
export const inPortions = async <One>(
  all: readonly One[],
  { wrote, before = 0 }: { readonly wrote: (rows: number) => void; readonly before?: number },
  write: (some: readonly One[]) => Promise<unknown>,
): Promise<void> => {
  for (let at = 0; at < all.length; at += rowsAtOnce) {
    await write(all.slice(at, at + rowsAtOnce))
    wrote(before + Math.min(at + rowsAtOnce, all.length))
  }
}
