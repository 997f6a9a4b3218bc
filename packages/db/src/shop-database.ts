import { existsSync } from 'node:fs'
import { clusterFolder, startEmbeddedPostgres } from './embedded/start.ts'
import { readApplied } from './migrations/applied-migrations.ts'
import { migrate, refuseOtherHistory } from './migrations/migrate.ts'
import { readMigrations } from './migrations/migration-files.ts'
import { openPool } from './pool.ts'
import { judgeServiceRole } from './roles/judge-service-role.ts'
import { withClient } from './with-client.ts'

/** Where a shop's data lie, and as whom they are reached. */
export type DatabasePlace = {
  /** `null`: the PostgreSQL that comes along runs on `dataFolder`, with both roles made for it. */
  readonly databaseUrl: string | null
  /** The owner's address, where the service may migrate by itself. */
  readonly databaseOwnerUrl: string | null
  readonly dataFolder: string
  /** `one`: whoever keeps this database knowingly lets the service be its owner. */
  readonly databaseRoles: 'two' | 'one'
}

export type ShopDatabase = {
  /** For the service and everything that writes as a person would. */
  readonly serviceUrl: string
  /** For migrations and repairs; `null`: the owner's address was not given. */
  readonly ownerUrl: string | null
  /** The administrator's address of the built-in PostgreSQL, for backups; `null` for a PostgreSQL of one's own. */
  readonly superuserUrl: string | null
  readonly stop: () => Promise<void>
}

/** What is wrong with a database that was given, in words that say what to do. */
export class ShopDatabaseProblem extends Error {
  override readonly name = 'ShopDatabaseProblem'
}

/** Opens the shop's database; a PostgreSQL of our own is started, or joined where it runs. `say` gets what takes long. */
export async function openShopDatabase(
  place: DatabasePlace,
  say: (line: string) => void,
  whenInUse: 'refuse' | 'join',
): Promise<ShopDatabase> {
  const { databaseUrl, databaseOwnerUrl, databaseRoles } = place
  if (databaseUrl !== null)
    return {
      serviceUrl: databaseUrl,
      ownerUrl: databaseOwnerUrl ?? (databaseRoles === 'one' ? databaseUrl : null),
      superuserUrl: null,
      stop: async () => undefined,
    }
  return startEmbeddedPostgres({ dataFolder: place.dataFolder, progress: say, whenInUse })
}

/** Whether there is no database of our own in its folder yet: one that is being opened is made first. */
export const isYetToBeMade = ({ databaseUrl, dataFolder }: DatabasePlace): boolean =>
  databaseUrl === null && !existsSync(clusterFolder(dataFolder))

/**
 * Applies pending migrations as the owner and gives the service's role its rights; gives the names of those it applied.
 * Without the owner's address it only looks: a ShopDatabaseProblem names what is pending.
 */
export async function bringUpToDate({
  serviceUrl,
  ownerUrl,
}: Pick<ShopDatabase, 'serviceUrl' | 'ownerUrl'>): Promise<string[]> {
  if (ownerUrl === null) {
    await refusePending(serviceUrl)
    return []
  }
  const [owner, service] = [await roleAt(ownerUrl), await roleAt(serviceUrl)]
  return migrate(ownerUrl, owner === service ? {} : { serviceRole: service })
}

/**
 * Refuses to serve as a role that could change or remove what was written, or says so loudly where the keeper of the
 * database has chosen one role (`DATABASE_ROLES=one`).
 */
export async function guardServiceRole(
  { serviceUrl }: Pick<ShopDatabase, 'serviceUrl'>,
  databaseRoles: DatabasePlace['databaseRoles'],
  say: (line: string) => void,
): Promise<void> {
  const pool = openPool({ url: serviceUrl, size: 1, onIdleError: () => undefined })
  const { role, could } = await judgeServiceRole(pool).finally(() => pool.end())
  if (could.length === 0) return
  const finding = `The service connects as ${role}, who could change or remove what was written: ${could.join('; ')}.`
  if (databaseRoles === 'two')
    throw new ShopDatabaseProblem(
      `${finding}\nMake a second role for the service, name it in DATABASE_URL and the owner in DATABASE_OWNER_URL: docs/operations.md says how. To run with one role all the same, set DATABASE_ROLES=one.`,
    )
  say(
    `WARNING: ${finding} DATABASE_ROLES=one allows it; only the digests outside the database would show it.`,
  )
}

/** The migrations of this version that a database lacks, by name. */
export async function listPendingMigrations(url: string): Promise<string[]> {
  const applied = await withClient(url, readApplied)
  const names = new Set(applied?.map(({ name }) => name))
  return readMigrations()
    .map(({ name }) => name)
    .filter((name) => !names.has(name))
}

async function refusePending(serviceUrl: string): Promise<void> {
  refuseOtherHistory((await withClient(serviceUrl, readApplied)) ?? [], readMigrations())
  const pending = await listPendingMigrations(serviceUrl)
  if (pending.length === 0) return
  throw new ShopDatabaseProblem(
    `The database of DATABASE_URL lacks ${pending.length} ${pending.length === 1 ? 'migration' : 'migrations'} (${pending[0]}${pending.length > 1 ? ' …' : ''}), and the service may not migrate. Set DATABASE_OWNER_URL to the same database as its owner, here or for one run of npm run db:migrate.`,
  )
}

function roleAt(url: string): Promise<string> {
  return withClient(url, async (client) => {
    const { rows } = await client.query<{ role: string }>('select current_user as role')
    return rows[0]?.role ?? ''
  })
}
