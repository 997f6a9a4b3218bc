import type { Prisma } from '@bayledger/db/generated/client'
import { v7 as newId } from 'uuid'
import type { Deps } from '../../deps.ts'
import { AppError } from '../app-error.ts'
import {
  type ChangedStore,
  type Kept,
  keepVersion,
  putRecordIn,
  type RecordStore,
} from '../record-versions.ts'
import { applyImport } from './apply-import.ts'
import type { CsvService } from './csv-service.ts'
import type { CsvTable, Values } from './csv-table.ts'
import { type ImportPlan, planImport, type StoredRow } from './plan-import.ts'
import { plannedRows, presentPreview } from './present-import.ts'
import { writeCsv } from './write-csv.ts'

type Tx = Prisma.TransactionClient
type Of = Pick<Deps, 'shopId' | 'clock'>

/** The records of a list as they are stored now, and how a row of a file becomes one of them. */
export type CsvList<Row extends Values, Content extends object> = {
  readonly table: CsvTable<Row>
  readonly rows: readonly StoredRow<Row, Kept<Content>>[]
  /** `before`: the record that the row changes; `null` for a new one. */
  readonly contentOf: (row: Row, before: Content | null) => Content
  /** The table by which a file is planned anew where its rows are right one by one and not together; `null`: they are. */
  readonly strictly?: (plan: ImportPlan<Row, Kept<Content>>) => CsvTable<Row> | null
}

/** A kind of record as its list in CSV. Without `insert`, a file adds none, and `check` says so of a row that would. */
type RecordCsv<Row extends Values, Content extends object> = {
  readonly store: ChangedStore<Content> & Partial<Pick<RecordStore<Content>, 'insert'>>
  readonly list: (from: Tx, of: Of) => Promise<CsvList<Row, Content>>
  /** What else a changed record brings with it, in the same transaction. */
  readonly changed?: (tx: Tx, of: Of, kept: Kept<Content>) => Promise<void>
}

/**
 * The list of a kind of record, written as CSV and read back: every row that is taken is a version of its record's
 * history, and a record that somebody saved meanwhile makes the preview a stale one.
 */
export const recordCsv = <Row extends Values, Content extends object>({
  store,
  list,
  changed,
}: RecordCsv<Row, Content>): CsvService => {
  const planFor = async (from: Tx, of: Of, bytes: Uint8Array) => {
    const { table, rows, contentOf, strictly } = await list(from, of)
    const plan = await planImport(table, bytes, rows)
    const stricter = strictly?.(plan) ?? null
    return { plan: stricter === null ? plan : await planImport(stricter, bytes, rows), contentOf }
  }
  return {
    write: async (deps) => {
      const { table, rows } = await list(deps.prisma, deps)
      return writeCsv(
        table,
        rows.map(({ row }) => row),
      )
    },
    preview: async (deps, bytes) => presentPreview((await planFor(deps.prisma, deps, bytes)).plan),
    apply: (deps, actor, key, { bytes, apply }) =>
      applyImport(
        deps,
        actor,
        key,
        apply,
        (tx) => planFor(tx, deps, bytes),
        async (tx, { plan, contentOf }, { at }) => {
          for (const { row } of plannedRows(plan, 'added')) {
            if (store.insert === undefined) throw new Error(`a file adds no ${store.subject}`)
            const kept = { id: newId(), version: 1, content: contentOf(row, null) }
            await store.insert(tx, deps.shopId, kept, at)
            await keepVersion(tx, deps.shopId, store.subject, kept, { by: actor, at })
          }
          for (const { row, stored } of plannedRows(plan, 'changed')) {
            const sent = { id: stored.id, version: stored.version, content: contentOf(row, stored.content) }
            const kept = await putRecordIn(tx, deps, actor, store, sent).catch(refuseAsStale)
            await changed?.(tx, deps, kept)
          }
        },
      ),
  }
}

const refuseAsStale = (cause: unknown): never => {
  if (cause instanceof AppError && cause.code === 'VERSION_STALE')
    throw new AppError({ code: 'CSV_PREVIEW_STALE' }, { cause })
  throw cause
}
