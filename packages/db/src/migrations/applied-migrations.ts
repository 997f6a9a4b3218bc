import { randomUUID } from 'node:crypto'
import type { Client } from 'pg'
import type { Migration } from './migration-files.ts'

/** A row of `_prisma_migrations` that still counts (not rolled back). */
export type AppliedMigration = {
  readonly name: string
  readonly checksum: string
  readonly finished: boolean
}

/** Prisma's own table, column by column, so that its command line reads what we wrote and we what it wrote. */
const TABLE = `create table _prisma_migrations (
  id varchar(36) primary key not null,
  checksum varchar(64) not null,
  finished_at timestamptz,
  migration_name varchar(255) not null,
  logs text,
  rolled_back_at timestamptz,
  started_at timestamptz not null default now(),
  applied_steps_count integer not null default 0
)`

/** Undefined when nothing was ever migrated here: the table is missing. */
export async function readApplied(client: Client): Promise<AppliedMigration[] | undefined> {
  const { rows: found } = await client.query(
    `select from pg_tables where schemaname = current_schema() and tablename = '_prisma_migrations'`,
  )
  if (found.length === 0) return undefined
  const { rows } = await client.query<AppliedMigration>(`
    select migration_name as name, checksum, finished_at is not null as finished
    from _prisma_migrations where rolled_back_at is null order by started_at, migration_name`)
  return rows
}

export async function makeAppliedTable(client: Client): Promise<void> {
  await client.query(TABLE)
}

/** Records a migration as Prisma records a finished one; in the migration's own transaction. */
export async function recordApplied(client: Client, migration: Migration): Promise<void> {
  await client.query(
    `insert into _prisma_migrations
       (id, checksum, finished_at, migration_name, logs, rolled_back_at, started_at, applied_steps_count)
     values ($1, $2, clock_timestamp(), $3, null, null, now(), 1)`,
    [randomUUID(), migration.checksum, migration.name],
  )
}
