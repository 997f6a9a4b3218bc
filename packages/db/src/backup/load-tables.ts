import { json } from 'node:stream/consumers'
import { pipeline } from 'node:stream/promises'
import type { Client } from 'pg'
import { from as copyFrom } from 'pg-copy-streams'
import * as z from 'zod/mini'
import { migrate } from '../migrations/migrate.ts'
import { readMigrations } from '../migrations/migration-files.ts'
import { withClient } from '../with-client.ts'
import { BackupProblem } from './backup-problem.ts'
import { listTables } from './copy-tables.ts'
import type { AboutBackup } from './manifest.ts'
import type { ArchiveEntry } from './read-tar.ts'

/** Takes the entries below `tables/` in their order. */
export type TableLoader = (entry: ArchiveEntry) => Promise<void>

/**
 * Fills an empty database with the rows of a backup, in one transaction: whole or not at all. The tables are first made
 * as they were, by the migrations that the backup names. `client` is the owner's; no superuser is needed: what
 * PostgreSQL would check or compute row by row is taken off meanwhile, and foreign keys are checked when they come back.
 */
export async function loadTables<T>(client: Client, load: (loader: TableLoader) => Promise<T>): Promise<T> {
  await client.query('begin')
  try {
    const tables = await listTables(client)
    const triggers = await listTriggers(client)
    const keys = await listForeignKeys(client)
    for (const { name, table } of keys) await client.query(`alter table ${table} drop constraint ${name}`)
    for (const { name, table } of triggers) await client.query(`alter table ${table} disable trigger ${name}`)
    for (const table of tables) await client.query(`truncate table public.${client.escapeIdentifier(table)}`)
    const loaded = await load(loaderOn(client, tables))
    for (const { name, table, definition } of keys)
      await client.query(`alter table ${table} add constraint ${name} ${definition}`)
    for (const { name, table, mode } of triggers)
      await client.query(`alter table ${table} enable ${mode} trigger ${name}`)
    await client.query('commit')
    return loaded
  } catch (error) {
    await client.query('rollback').catch(() => undefined)
    throw error
  }
}

/** Makes the tables of an empty database as they were when the backup was made; refuses one that has tables. */
export async function makeTablesOf(ownerUrl: string, about: AboutBackup): Promise<void> {
  const found = await withClient(ownerUrl, listTables)
  if (found.length > 0)
    throw new BackupProblem(
      `The database to fill is not empty (it has ${found.slice(0, 3).join(', ')}). A backup is restored into an empty database only: make a new one and name that. Nothing was changed.`,
    )
  const names = new Set(about.migrations.map(({ name }) => name))
  await migrate(ownerUrl, { migrations: readMigrations().filter(({ name }) => names.has(name)) })
}

/** Refuses a backup of a newer program, whose tables this one does not know. */
export function refuseNewer(about: AboutBackup): void {
  const known = new Map(readMigrations().map(({ name, checksum }) => [name, checksum]))
  const unknown = about.migrations.find(({ name, checksum }) => known.get(name) !== checksum)
  if (unknown !== undefined)
    throw new BackupProblem(
      `The backup was made by a newer Bayledger than this one (its database has ${unknown.name}). Install that version or a newer one, then restore again. Nothing was changed.`,
    )
}

function loaderOn(client: Client, tables: readonly string[]): TableLoader {
  const columns = new Map<string, readonly string[]>()
  return async ({ path, content }) => {
    const [, table = '', file = ''] = path.split('/')
    if (!tables.includes(table))
      throw new BackupProblem(`The backup holds a table ${table}, which its migrations do not make.`)
    if (file === 'columns.json') {
      columns.set(table, z.array(z.string()).parse(await json(content)))
      return
    }
    const names = (columns.get(table) ?? []).map((name) => client.escapeIdentifier(name)).join(', ')
    await pipeline(
      content,
      client.query(copyFrom(`copy public.${client.escapeIdentifier(table)} (${names}) from stdin`)),
    )
  }
}

type Trigger = { readonly name: string; readonly table: string; readonly mode: 'always' | 'replica' | '' }

async function listTriggers(client: Client): Promise<Trigger[]> {
  const { rows } = await client.query<Trigger>(
    `select quote_ident(tgname) as name, tgrelid::regclass::text as "table",
            case tgenabled when 'A' then 'always' when 'R' then 'replica' else '' end as mode
     from pg_trigger join pg_class on pg_class.oid = tgrelid
     where relnamespace = 'public'::regnamespace and not tgisinternal and tgenabled <> 'D' order by 1, 2`,
  )
  return rows
}

type ForeignKey = { readonly name: string; readonly table: string; readonly definition: string }

async function listForeignKeys(client: Client): Promise<ForeignKey[]> {
  const { rows } = await client.query<ForeignKey>(
    `select quote_ident(conname) as name, conrelid::regclass::text as "table",
            pg_get_constraintdef(oid) as definition
     from pg_constraint where contype = 'f' and connamespace = 'public'::regnamespace order by 1, 2`,
  )
  return rows
}
