import type { Prisma } from '@bayledger/db/generated/client'
import { v7 as newId } from 'uuid'
import { AppError } from '../app-error.ts'
import {
  type ChangedStore,
  type Kept,
  keepVersion,
  putRecordIn,
  type RecordStore,
} from '../record-versions.ts'
import type { CsvService } from './csv-service.ts'
import type { Values } from './csv-table.ts'
import { type CsvRows, type ListOf, listCsv } from './list-csv.ts'
import { plannedRows } from './present-import.ts'

type Tx = Prisma.TransactionClient

/** The records of a list as they are stored now, and how a row of a file becomes one of them. */
export type CsvList<Row extends Values, Content extends object> = CsvRows<Row, Kept<Content>> & {
  /** `before`: the record that the row changes; `null` for a new one. */
  readonly contentOf: (row: Row, before: Content | null) => Content
}

/** A kind of record as its list in CSV. Without `insert`, a file adds none, and `check` says so of a row that would. */
type RecordCsv<Row extends Values, Content extends object> = {
  readonly store: ChangedStore<Content> & Partial<Pick<RecordStore<Content>, 'insert'>>
  readonly list: (from: Tx, of: ListOf) => Promise<CsvList<Row, Content>>
  /** What else a changed record brings with it, in the same transaction. */
  readonly changed?: (tx: Tx, of: ListOf, kept: Kept<Content>) => Promise<void>
}

/**
 * The list of a kind of record, written as CSV and read back: every row that is taken is a version of its record's
 * history, and a record that somebody saved meanwhile makes the preview a stale one.
 */
export const recordCsv = <Row extends Values, Content extends object>({
  store,
  list,
  changed,
}: RecordCsv<Row, Content>): CsvService =>
  listCsv<Row, Kept<Content>, CsvList<Row, Content>>({
    list,
    put: async (tx, of, { plan, list: { contentOf }, actor, at, wrote }) => {
      let done = 0
      for (const { row } of plannedRows(plan, 'added')) {
        if (store.insert === undefined) throw new Error(`a file adds no ${store.subject}`)
        const kept = { id: newId(), version: 1, content: contentOf(row, null) }
        await store.insert(tx, of.shopId, kept, at)
        await keepVersion(tx, of.shopId, store.subject, kept, { by: actor, at })
        done += 1
        wrote(done)
      }
      for (const { row, stored } of plannedRows(plan, 'changed')) {
        const sent = { id: stored.id, version: stored.version, content: contentOf(row, stored.content) }
        const kept = await putRecordIn(tx, of, actor, store, sent).catch(refuseAsStale)
        await changed?.(tx, of, kept)
        done += 1
        wrote(done)
      }
    },
  })

const refuseAsStale = (cause: unknown): never => {
  if (cause instanceof AppError && cause.code === 'VERSION_STALE')
    throw new AppError({ code: 'CSV_PREVIEW_STALE' }, { cause })
  throw cause
}
