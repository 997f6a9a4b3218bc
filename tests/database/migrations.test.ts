import { createHash } from 'node:crypto'
import { migrate } from '@bayledger/db/migrations/migrate'
import { type Migration, readMigrations } from '@bayledger/db/migrations/migration-files'
import { Client } from 'pg'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { createTestDatabase, type TestDatabase } from '../support/database.ts'

let database: TestDatabase

beforeEach(async () => {
  database = await createTestDatabase('empty')
})

afterEach(() => database.drop())

const FIRST = migration('1_tires', 'create table tires (id int primary key); insert into tires values (1)')
const SECOND = migration('2_wheels', 'create table wheels (id int); alter table tires add column size text')

describe('the migrations runner', () => {
  it('applies what is pending in order, and nothing twice', async () => {
    expect(await apply(FIRST)).toEqual(['1_tires'])
    expect(await apply(FIRST, SECOND)).toEqual(['2_wheels'])
    expect(await apply(FIRST, SECOND)).toEqual([])
    expect(await query('select id, size from tires')).toEqual([{ id: 1, size: null }])
  })

  // Source of the columns and their meaning: Prisma's own table, schema-engine/connectors/sql-schema-connector,
  // file sql_migration_persistence.rs of github.com/prisma/prisma-engines (from memory).
  it('records them as Prisma does', async () => {
    await apply(FIRST)
    const rows = await query(
      `select checksum, migration_name, logs, rolled_back_at, applied_steps_count, length(id) as id,
              started_at <= finished_at as finished from _prisma_migrations`,
    )
    expect(rows).toEqual([
      {
        checksum: createHash('sha256').update(FIRST.sql).digest('hex'),
        migration_name: '1_tires',
        logs: null,
        rolled_back_at: null,
        applied_steps_count: 1,
        id: 36,
        finished: true,
      },
    ])
  })

  it('lets one of many processes migrate while the others wait', async () => {
    const slow = migration('1_slow', `select pg_sleep(0.2); ${FIRST.sql}`)
    const done = await Promise.all(Array.from({ length: 6 }, () => apply(slow, SECOND)))
    expect(done.filter((names) => names.length > 0)).toEqual([['1_slow', '2_wheels']])
    expect(await query('select count(*)::int as rows from tires')).toEqual([{ rows: 1 }])
  })

  it('refuses a migration that was changed after it had been applied', async () => {
    await apply(FIRST)
    await expect(apply(migration('1_tires', `${FIRST.sql} `), SECOND)).rejects.toThrow(
      /1_tires was changed after .* Put its migration.sql back/,
    )
    expect(await query(`select to_regclass('wheels') as wheels`)).toEqual([{ wheels: null }])
  })

  it('refuses a database that has a migration unknown here', async () => {
    await apply(FIRST, SECOND)
    await expect(apply(FIRST)).rejects.toThrow(/2_wheels, which this Bayledger does not know/)
  })

  it('refuses a database where another tool left a migration unfinished', async () => {
    await apply(FIRST)
    await query('update _prisma_migrations set finished_at = null')
    await expect(apply(FIRST)).rejects.toThrow(/1_tires was begun by another tool and never finished/)
  })

  it('applies again what Prisma marked as rolled back', async () => {
    await apply(FIRST)
    await query('update _prisma_migrations set rolled_back_at = now(); drop table tires')
    expect(await apply(FIRST)).toEqual(['1_tires'])
  })

  it('leaves no trace of a migration that fails half-way', async () => {
    const bad = migration('2_bad', 'create table half (id int); select 1 / 0')
    await expect(apply(FIRST, bad)).rejects.toThrow(/2_bad failed and left no trace: division by zero/)
    expect(await query(`select to_regclass('half') as half`)).toEqual([{ half: null }])
    expect(await query('select migration_name from _prisma_migrations')).toEqual([
      { migration_name: '1_tires' },
    ])
  })

  it('goes on where it was broken off in the middle of one', async () => {
    const slow = migration('2_slow', 'create table spare (id int); select pg_sleep(60)')
    const broken = expect(apply(FIRST, slow)).rejects.toThrow(/2_slow failed and left no trace|terminated/)
    await expect
      .poll(() =>
        query(
          `select from pg_stat_activity where query like '%pg_sleep(60)' and datname = current_database() and pid <> pg_backend_pid()`,
        ),
      )
      .toHaveLength(1)
    await query(`select pg_terminate_backend(pid) from pg_stat_activity
      where query like '%pg_sleep(60)' and datname = current_database() and pid <> pg_backend_pid()`)
    await broken
    const quick = migration('2_slow', 'create table spare (id int)')
    expect(await Promise.all([apply(FIRST, quick), apply(FIRST, quick)])).toContainEqual(['2_slow'])
    expect(await query(`select to_regclass('spare') is not null as spare`)).toEqual([{ spare: true }])
  })

  it('refuses a database with foreign tables', async () => {
    await query('create table invoices (id int)')
    await expect(apply(FIRST)).rejects.toThrow(/not empty \(it has invoices\)/)
  })

  it('makes the shop from the migrations of the repository', async () => {
    const names = readMigrations().map(({ name }) => name)
    expect(names[0]).toBe('20260112000000_the_shop')
    expect(await migrate(database.url)).toEqual(names)
    expect(await query('select count(*)::int as entries from entries')).toEqual([{ entries: 0 }])
  })
})

function migration(name: string, sql: string): Migration {
  return { name, sql, checksum: createHash('sha256').update(sql).digest('hex') }
}

function apply(...migrations: Migration[]): Promise<string[]> {
  return migrate(database.url, { migrations })
}

async function query(text: string): Promise<unknown[]> {
  const client = new Client({ connectionString: database.url })
  await client.connect()
  try {
    return (await client.query(text)).rows
  } finally {
    await client.end()
  }
}
