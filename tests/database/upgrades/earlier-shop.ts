import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readIdentities } from '@bayledger/db/backup/backup-key'
import { listColumns, listTables } from '@bayledger/db/backup/copy-tables'
import { loadTables, makeTablesOf } from '@bayledger/db/backup/load-tables'
import { readAbout, readBackup } from '@bayledger/db/backup/read-backup'
import { unpackInto } from '@bayledger/db/backup/unpack-into'
import { migrate } from '@bayledger/db/migrations/migrate'
import { readMigrations } from '@bayledger/db/migrations/migration-files'
import { withClient } from '@bayledger/db/with-client'
import type { Client } from 'pg'
import { createTestDatabase, type TestDatabase } from '../../support/database.ts'

/**
 * A shop of 2026-11-30 with rows in every table of its 33 migrations: the demo, after some hundred requests of `npm run fuzz`,
 * with a few rows by hand. What an earlier state had room for of them is a shop of that state.
 */
const backup = join(import.meta.dirname, 'after-second-steps.age')
const identities = readIdentities(join(import.meta.dirname, 'key.txt'))

export type LaterShop = {
  readonly database: TestDatabase
  /** Keys and digests that belong to it. */
  readonly folder: string
  readonly drop: () => Promise<void>
}

/** The shop itself, brought up to date. */
export const openLaterShop = async (): Promise<LaterShop> => {
  const database = await createTestDatabase('empty')
  const folder = mkdtempSync(join(tmpdir(), 'bayledger-upgrade-'))
  await makeTablesOf(database.url, await readAbout(backup, identities))
  await withClient(database.url, (client) =>
    loadTables(client, (load) =>
      readBackup(backup, identities, (entry) =>
        entry.path.startsWith('tables/') ? load(entry) : unpackInto(folder, entry),
      ),
    ),
  )
  await migrate(database.url)
  return {
    database,
    folder,
    drop: async () => {
      await database.drop()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

export type EarlierShop = {
  readonly database: TestDatabase
  /** The tables of that state. */
  readonly tables: readonly string[]
  /** How many rows of a table that state refuses: they hold what only a later one knows. */
  readonly refused: Readonly<Record<string, number>>
}

/** A database with the first so many migrations, and in it what that state had room for of the later shop's rows. */
export const makeEarlierShop = async (later: LaterShop, count: number): Promise<EarlierShop> => {
  const database = await createTestDatabase('empty')
  await migrate(database.url, { migrations: readMigrations().slice(0, count) })
  return withClient(database.url, async (client) => {
    const tables = await listTables(client)
    const refused: Record<string, number> = {}
    await loadTables(client, () =>
      withClient(later.database.url, async (from) => {
        for (const table of tables) {
          const left = await plant(client, from, table, count)
          if (left > 0) refused[table] = left
        }
      }),
    )
    return { database, tables, refused }
  })
}

/** Rows that only programs of a later state write, by how many migrations that has. */
const writtenSince: Readonly<Record<string, { readonly since: number; readonly rows: string }>> = {
  // The second migration begins with none: nothing was released before it.
  refused_entries: { since: 2, rows: 'true' },
  // Kits leave their shelves since then; the migration makes up for those that were fitted before.
  stock_movements: {
    since: 27,
    rows: `entry_id in (select id from entries where kind = 'sensor.fitted') or entry_id in (
      select x.id from entries x join entries e on e.id::text = x.payload ->> 'entryId'
      where x.kind = 'entry.struck' and e.kind = 'sensor.fitted')`,
  },
}

/** Writes the rows of one table, of the columns that both have; gives how many the table refuses by a check of its own. */
const plant = async (into: Client, from: Client, table: string, state: number): Promise<number> => {
  const there = await listColumns(from, table)
  const columns = (await listColumns(into, table)).filter((name) => there.includes(name)).join(', ')
  const later = writtenSince[table]
  const without = later !== undefined && state < later.since ? ` where not (${later.rows})` : ''
  const { rows } = await from.query<{ row: string }>(
    `select row_to_json(t)::text as row from ${table} t${without}`,
  )
  const write = async (some: readonly string[]): Promise<number> => {
    await into.query('savepoint planting')
    try {
      await into.query(
        `insert into ${table} (${columns}) select ${columns} from json_populate_recordset(null::${table}, $1::json)`,
        [`[${some.join(',')}]`],
      )
      await into.query('release savepoint planting')
      return 0
    } catch (error) {
      await into.query('rollback to savepoint planting')
      if (!(error instanceof Error && 'code' in error && error.code === '23514')) throw error
      if (some.length === 1) return 1
      let refused = 0
      for (const row of some) refused += await write([row])
      return refused
    }
  }
  return write(rows.map(({ row }) => row))
}
