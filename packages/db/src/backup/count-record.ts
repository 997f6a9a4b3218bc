import type { Client } from 'pg'
import { pause } from '../embedded/pause.ts'
import { forgeable } from '../roles/service-may.ts'
import { withClient } from '../with-client.ts'

/** The rows of each table of the record, and the name of the place in PostgreSQL's log at which they were counted. */
export type CountedRecord = {
  readonly restorePoint: string
  /** When the mark was made, by the clock of the database. */
  readonly at: Date
  readonly counts: Readonly<Record<string, number>>
}

const TRIES = 100

/**
 * Marks a place in the log of the built-in PostgreSQL and counts the record as it is there, exactly: for an instant no
 * table of the record can be written to, in which the mark is made and the snapshot of the count begins. `url` is the
 * superuser's, to the shop's database.
 */
export function countRecordAtMark(url: string, restorePoint: string): Promise<CountedRecord> {
  return withClient(url, (holder) =>
    withClient(url, async (counter) => {
      const tables = await listRecordTables(counter)
      await counter.query('begin isolation level repeatable read read only')
      await holdStill(holder, tables)
      // The first query of this transaction takes its snapshot.
      await counter.query('select 1')
      const { rows } = await holder.query<{ at: Date }>(
        'select pg_create_restore_point($1), pg_current_xact_id(), clock_timestamp() as at',
        [restorePoint],
      )
      // The mark is on disk with the commit of a transaction that has a number.
      await holder.query('set local synchronous_commit = on')
      await holder.query('commit')
      const counts = await countRows(counter, tables)
      await counter.query('commit')
      return { restorePoint, at: rows[0]?.at ?? new Date(), counts }
    }),
  )
}

/** The rows of each of these tables, as the connection's transaction sees them. */
export async function countRows(client: Client, tables: readonly string[]): Promise<Record<string, number>> {
  const counts: Record<string, number> = {}
  for (const table of tables) {
    const { rows } = await client.query<{ rows: string }>(
      `select count(*) as rows from public.${client.escapeIdentifier(table)}`,
    )
    counts[table] = Number(rows[0]?.rows)
  }
  return counts
}

/** A database of an earlier version may lack some. */
async function listRecordTables(client: Client): Promise<string[]> {
  const { rows } = await client.query<{ name: string }>(
    `select relname as name from pg_class
     where relnamespace = 'public'::regnamespace and relkind = 'r' and relname = any ($1) order by 1`,
    [[...forgeable]],
  )
  return rows.map(({ name }) => name)
}

/**
 * Waits for a moment at which nobody writes to the tables. It gives up after less than the second in which PostgreSQL
 * looks for deadlocks, and tries again, so that no work of the shop is ever broken off for it.
 */
async function holdStill(holder: Client, tables: readonly string[]): Promise<void> {
  if (tables.length === 0) return void (await holder.query('begin'))
  const names = tables.map((name) => `public.${holder.escapeIdentifier(name)}`).join(', ')
  for (let triesLeft = TRIES; ; triesLeft -= 1) {
    try {
      await holder.query('begin')
      await holder.query(`set local lock_timeout = '500ms'`)
      await holder.query(`lock table ${names} in share mode`)
      return
    } catch (error) {
      await holder.query('rollback')
      const isLate = error instanceof Error && 'code' in error && error.code === '55P03'
      if (!isLate || triesLeft === 0) throw error
      await pause(200)
    }
  }
}
