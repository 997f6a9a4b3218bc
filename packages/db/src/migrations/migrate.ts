import type { Client } from 'pg'
import { grantToService } from '../roles/grant-to-service.ts'
import { withClient } from '../with-client.ts'
import { type AppliedMigration, makeAppliedTable, readApplied, recordApplied } from './applied-migrations.ts'
import { type Migration, readMigrations } from './migration-files.ts'
import { MigrationProblem } from './migration-problem.ts'

/** The number under which Prisma's own migrate command holds its advisory lock: the two exclude each other. */
const PRISMA_MIGRATE_LOCK = 72707369
const OLDEST_VERSION = 150000

export type MigrateOptions = {
  readonly migrations?: readonly Migration[]
  /** The role that serves: it gets its rights, and no others, after every migration. Absent: nobody is granted anything. */
  readonly serviceRole?: string
  readonly progress?: (line: string) => void
}

/**
 * Applies what is pending, each migration with its record in one transaction, and returns the names it applied. `url` is
 * the owner's; the service's role is granted what it may do.
 * Several processes may call it at once: one migrates, the others wait and find nothing left to do.
 * @throws MigrationProblem if the database and the folder disagree; nothing is changed then.
 */
export function migrate(url: string, options: MigrateOptions = {}): Promise<string[]> {
  const { migrations = readMigrations(), serviceRole, progress = () => undefined } = options
  return withClient(url, async (client) => {
    await refuseOldServer(client)
    await client.query('select pg_advisory_lock($1)', [PRISMA_MIGRATE_LOCK])
    const applied = await readApplied(client)
    if (applied === undefined) await refuseForeignTables(client)
    refuseOtherHistory(applied ?? [], migrations)
    const names = new Set(applied?.map(({ name }) => name))
    const pending = migrations.filter(({ name }) => !names.has(name))
    if (applied === undefined) await makeAppliedTable(client)
    for (const migration of pending) {
      progress(`migrating the database: ${migration.name}`)
      await apply(client, migration)
    }
    if (serviceRole !== undefined) await grantToService(client, serviceRole)
    return pending.map(({ name }) => name)
  })
}

async function apply(client: Client, migration: Migration): Promise<void> {
  try {
    await client.query('begin')
    await client.query(migration.sql)
    await recordApplied(client, migration)
    await client.query('commit')
  } catch (error) {
    await client.query('rollback')
    throw new MigrationProblem(
      `The migration ${migration.name} failed and left no trace: ${error instanceof Error ? error.message : error}. Fix its SQL or the data it met, then start again.`,
    )
  }
}

/** Refuses a database that a newer program migrated, or of which an applied migration was changed or never finished. */
export function refuseOtherHistory(
  applied: readonly AppliedMigration[],
  migrations: readonly Migration[],
): void {
  for (const { name, checksum, finished } of applied) {
    if (!finished) {
      throw new MigrationProblem(
        `The migration ${name} was begun by another tool and never finished. Look at the row in _prisma_migrations, put the database right, and mark the row finished or rolled back.`,
      )
    }
    const migration = migrations.find((candidate) => candidate.name === name)
    if (migration === undefined) {
      throw new MigrationProblem(
        `The database has the migration ${name}, which this Bayledger does not know: it was made by a newer one, or the file is missing. Start the newer one, or put the file back; nothing was changed.`,
      )
    }
    if (migration.checksum !== checksum) {
      throw new MigrationProblem(
        `The migration ${name} was changed after it had been applied to this database. Put its migration.sql back as it was and write the change as a new migration (npm run db:new -- <name>).`,
      )
    }
  }
}

async function refuseForeignTables(client: Client): Promise<void> {
  const { rows } = await client.query<{ name: string }>(
    'select tablename as name from pg_tables where schemaname = current_schema() order by 1 limit 3',
  )
  if (rows.length === 0) return
  throw new MigrationProblem(
    `The database is not empty (it has ${rows.map(({ name }) => name).join(', ')}) and was not made by Bayledger. Make an empty database for it and name that one.`,
  )
}

async function refuseOldServer(client: Client): Promise<void> {
  const { rows } = await client.query<{ version: number; name: string }>(
    `select current_setting('server_version_num')::int as version, current_setting('server_version') as name`,
  )
  const server = rows[0]
  if (server === undefined || server.version >= OLDEST_VERSION) return
  throw new MigrationProblem(
    `This is a PostgreSQL ${server.name}; Bayledger needs 15 or newer. Nothing was changed.`,
  )
}
