import { existsSync, mkdirSync, readdirSync, renameSync, rmdirSync, rmSync } from 'node:fs'
import { basename, dirname, join, resolve } from 'node:path'
import { findBinaries } from '../embedded/binaries.ts'
import { chooseIdentity } from '../embedded/identity.ts'
import { startEmbeddedPostgres } from '../embedded/start.ts'
import { syncFolder } from '../embedded/sync-folder.ts'
import { bringUpToDate } from '../shop-database.ts'
import { withClient } from '../with-client.ts'
import { type FoundBackup, logFolder } from './backup-folder.ts'
import { keepRecipientsOf } from './backup-key.ts'
import { BackupProblem } from './backup-problem.ts'
import { countRows } from './count-record.ts'
import { restoreKeptFiles } from './kept-files.ts'
import { setLaterDigestsAside } from './later-digests.ts'
import { loadTables, makeTablesOf, refuseNewer } from './load-tables.ts'
import type { AboutBackup, Manifest } from './manifest.ts'
import { readAbout, readBackup } from './read-backup.ts'
import { type RecoveryTarget, recoverCluster } from './recover-cluster.ts'
import { restoreLog } from './restore-log.ts'
import { unpackInto } from './unpack-into.ts'

export type BackupToRestore = {
  readonly backup: FoundBackup
  readonly identities: readonly string[]
  /** The data folder to be; it must be missing or empty. */
  readonly to: string
  /**
   * `backup`: exactly what was counted when it was made. `newest`: with everything that was kept after it. An instant:
   * with everything up to then.
   */
  readonly until: 'backup' | 'newest' | Date
  /** An empty database of an outside PostgreSQL for the rows of a backup of tables; `null`: a built-in one is made. */
  readonly outside: { readonly serviceUrl: string; readonly ownerUrl: string } | null
  readonly progress: (line: string) => void
}

/** A restored shop whose database runs, before it takes its place. */
export type OpenedShop = {
  readonly about: AboutBackup
  readonly manifest: Manifest
  /** The rows of each table that the manifest counts, as they are now. */
  readonly counts: Readonly<Record<string, number>>
  readonly serviceUrl: string
  readonly ownerUrl: string
  /** The migrations that were applied after the rows were there. */
  readonly upgradedBy: readonly string[]
  readonly dataFolder: string
  /** Digests from after the moment that was restored, set aside in the data folder. */
  readonly laterDigests: number
}

/**
 * Restores a backup beside its place, lets `check` look at the running shop, and moves it into its place when that is
 * done. Whatever fails leaves nothing behind, except where an outside database was already filled.
 */
export async function restoreBackup<T>(
  asked: BackupToRestore,
  check: (shop: OpenedShop) => Promise<T>,
): Promise<T> {
  const to = resolve(asked.to)
  refuseOccupied(to)
  const about = await readAbout(asked.backup.file, asked.identities)
  refuseNewer(about)
  refuseImpossible(about, asked)
  const beside = join(dirname(to), `${basename(to)}.restoring-${process.pid}`)
  rmSync(beside, { recursive: true, force: true })
  mkdirSync(beside, { recursive: true, mode: 0o700 })
  try {
    const checked =
      about.kind === 'cluster'
        ? await openCluster(beside, asked, check)
        : await openTables(beside, asked, about, check)
    await keepRecipientsOf(asked.identities, beside)
    if (existsSync(to)) rmdirSync(to)
    renameSync(beside, to)
    syncFolder(dirname(to))
    return checked
  } catch (error) {
    rmSync(beside, { recursive: true, force: true })
    throw error
  }
}

type Check<T> = (shop: OpenedShop) => Promise<T>

async function openCluster<T>(beside: string, asked: BackupToRestore, check: Check<T>): Promise<T> {
  const { backup, identities, until, progress } = asked
  progress(`unpacking ${basename(backup.file)} (${Math.ceil(backup.bytes / 1_000_000)} MB)`)
  const { about, manifest } = await readBackup(backup.file, identities, (entry) => unpackInto(beside, entry))
  const line = backup.log === null ? null : logFolder(dirname(backup.file), backup.log.line)
  const cluster = join(beside, 'postgres')
  if (until !== 'backup' && line !== null && existsSync(line)) {
    const files = await restoreLog(line, join(cluster, 'pg_wal'), identities)
    progress(`${files} ${files === 1 ? 'file' : 'files'} of the log after it`)
    await restoreKeptFiles(line, beside, identities)
  }
  const binaries = findBinaries()
  await recoverCluster(
    {
      folder: cluster,
      log: join(beside, 'postgres.log'),
      binaries,
      identity: chooseIdentity(beside, binaries.postgres),
      progress,
    },
    targetOf(until, manifest),
  )
  const server = await startEmbeddedPostgres({ dataFolder: beside, progress })
  try {
    return await opened({ beside, about, manifest, database: server }, check)
  } finally {
    await server.stop()
  }
}

async function openTables<T>(
  beside: string,
  asked: BackupToRestore,
  about: AboutBackup,
  check: Check<T>,
): Promise<T> {
  const { backup, identities, outside, progress } = asked
  const server = outside === null ? await startEmbeddedPostgres({ dataFolder: beside, progress }) : null
  try {
    const database = server ?? outside
    if (database === null) throw new Error('there is no database to restore into')
    await makeTablesOf(database.ownerUrl, about)
    const { manifest } = await withClient(database.ownerUrl, (client) =>
      loadTables(client, (load) =>
        readBackup(backup.file, identities, (entry) =>
          entry.path.startsWith('tables/') ? load(entry) : unpackInto(beside, entry),
        ),
      ),
    )
    return await opened({ beside, about, manifest, database }, check)
  } finally {
    await server?.stop()
  }
}

async function opened<T>(
  found: {
    readonly beside: string
    readonly about: AboutBackup
    readonly manifest: Manifest
    readonly database: { readonly serviceUrl: string; readonly ownerUrl: string }
  },
  check: Check<T>,
): Promise<T> {
  const { beside, about, manifest, database } = found
  // Before migrations, which may add rows.
  const counts = await withClient(database.ownerUrl, (client) =>
    countRows(client, Object.keys(manifest.counts)),
  )
  const upgradedBy = await bringUpToDate(database)
  const laterDigests = await withClient(database.serviceUrl, (client) => setLaterDigestsAside(client, beside))
  const { serviceUrl, ownerUrl } = database
  return check({
    about,
    manifest,
    counts,
    serviceUrl,
    ownerUrl,
    upgradedBy,
    dataFolder: beside,
    laterDigests,
  })
}

function targetOf(until: BackupToRestore['until'], { restorePoint }: Manifest): RecoveryTarget {
  if (until instanceof Date) return { kind: 'time', at: until }
  if (until === 'backup' && restorePoint !== null) return { kind: 'mark', name: restorePoint }
  return { kind: 'end' }
}

function refuseOccupied(to: string): void {
  if (!existsSync(to) || readdirSync(to).length === 0) return
  throw new BackupProblem(
    `${to} is not empty. A backup is restored into an empty place only, so that nothing is written over: name a folder that is not there yet.`,
  )
}

function refuseImpossible(about: AboutBackup, { outside, until, backup }: BackupToRestore): void {
  if (about.kind === 'tables' && until instanceof Date)
    throw new BackupProblem(
      'This is a backup of tables: it holds one moment, and no other can be restored from it. Leave --until out.',
    )
  if (about.kind === 'tables') return
  if (outside !== null)
    throw new BackupProblem(
      'This is a backup of the built-in PostgreSQL and cannot fill another one. Unset DATABASE_URL to restore it; to move to the other one, then make a backup of tables: npm run backup -- --tables',
    )
  const own = findBinaries().majorVersion
  if (about.postgres !== own)
    throw new BackupProblem(
      `This is a copy of a PostgreSQL ${about.postgres}; this Bayledger brings PostgreSQL ${own}, which cannot read it. Restore it with the Bayledger that made it, make a backup of tables there (npm run backup -- --tables), and restore that one here.`,
    )
  if (until instanceof Date && until < backup.at)
    throw new BackupProblem(
      `The backup was made after that moment (${backup.at.toISOString()}). Use an older one, or name their folder and the right one is chosen.`,
    )
}
