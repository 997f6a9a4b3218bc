import { existsSync, mkdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { Client } from 'pg'
import { readApplied } from '../migrations/applied-migrations.ts'
import { withClient } from '../with-client.ts'
import { type ArchiveWriter, addFilesBelow, writeArchive } from './archive-writer.ts'
import { backupName, type FoundBackup, noLine } from './backup-folder.ts'
import { BackupProblem } from './backup-problem.ts'
import { clearUnfinished } from './clear-unfinished.ts'
import { copyCluster, shopUrl } from './copy-cluster.ts'
import { copyTables } from './copy-tables.ts'
import { readLine } from './log-slot.ts'
import { type AboutBackup, aboutPath, type Manifest, manifestPath } from './manifest.ts'

/** A PostgreSQL of this machine, copied by its files. */
export type ClusterSource = {
  readonly kind: 'cluster'
  readonly superuserUrl: string
  /** The shop's database in it. */
  readonly database: string
}

/** Any PostgreSQL, copied by its rows. */
export type TablesSource = {
  readonly kind: 'tables'
  /** An address that may read every table. */
  readonly url: string
}

export type BackupToMake = {
  /** Where it goes; made when missing. */
  readonly folder: string
  readonly recipients: readonly string[]
  readonly database: ClusterSource | TablesSource
  readonly files: FilesToKeep
  readonly progress: (line: string) => void
}

/** What belongs to a shop and is no row of its database. */
export type FilesToKeep = {
  /** Of it are kept the keys that sign and the certificates for tablets. */
  readonly dataFolder: string
  readonly digestFolder: string
  /** The settings in force, as JSON, and the files that they name. */
  readonly settings: Readonly<Record<string, string>>
}

export type MadeBackup = Pick<FoundBackup, 'file' | 'at' | 'bytes'> & { readonly counts: Manifest['counts'] }

/** Makes a backup while the shop works. Throws a BackupProblem in words; what was begun is removed then. */
export async function makeBackup(asked: BackupToMake): Promise<MadeBackup> {
  const { folder, recipients, database, progress } = asked
  if (recipients.length === 0)
    throw new BackupProblem(
      'No key was made for backups yet. Make one, and keep what it shows away from this machine: npm run backup:key',
    )
  mkdirSync(folder, { recursive: true, mode: 0o700 })
  clearUnfinished(folder)
  const nameOf = ({ at, log }: Filled) => backupName(at, log)
  const filled = await writeArchive<Filled>({ folder, nameOf }, recipients, async (archive) => {
    await archive.addBytes(aboutPath, jsonOf(await describe(database)))
    const copied =
      database.kind === 'cluster'
        ? await fillCluster(archive, database, progress)
        : await fillTables(archive, database, progress)
    await addFilesToKeep(archive, asked.files)
    const { [aboutPath]: _, ...files } = archive.files()
    const manifest: Manifest = { files, counts: copied.counts, restorePoint: copied.restorePoint }
    await archive.addBytes(manifestPath, jsonOf(manifest))
    return copied
  })
  const file = join(folder, nameOf(filled))
  return { file, at: filled.at, bytes: statSync(file).size, counts: filled.counts }
}

type Filled = Pick<FoundBackup, 'at' | 'log'> & Pick<Manifest, 'counts' | 'restorePoint'>

async function fillCluster(
  archive: ArchiveWriter,
  database: ClusterSource,
  progress: BackupToMake['progress'],
): Promise<Filled> {
  const line = await withClient(database.superuserUrl, readLine)
  const copied = await copyCluster(archive, { ...database, progress: inSteps(progress) })
  const { at, counts, restorePoint, firstSegment } = copied
  return { at, counts, restorePoint, log: { line: line ?? noLine, firstSegment } }
}

async function fillTables(
  archive: ArchiveWriter,
  database: TablesSource,
  progress: BackupToMake['progress'],
): Promise<Filled> {
  const { at, counts } = await copyTables(archive, database.url, (table) => progress(`copying ${table}`))
  return { at, counts, restorePoint: null, log: null }
}

async function addFilesToKeep(archive: ArchiveWriter, files: FilesToKeep): Promise<void> {
  await addFilesBelow(archive, join(files.dataFolder, 'signing'), 'signing')
  // Tablets trust the authority in it: without its key each would need another one.
  for (const name of ['authority.pem', 'authority-key.pem', 'host.pem', 'host-key.pem']) {
    const file = join(files.dataFolder, 'certificates', name)
    if (existsSync(file)) await archive.addBytes(`certificates/${name}`, readFileSync(file))
  }
  // After the rows: a digest is a file before the database has its note, so that no note is without its file.
  await addFilesBelow(archive, files.digestFolder, 'digests')
  for (const [name, text] of Object.entries(files.settings))
    await archive.addBytes(`settings/${name}`, Buffer.from(text))
}

function describe(database: ClusterSource | TablesSource): Promise<AboutBackup> {
  const url = database.kind === 'cluster' ? shopUrl(database) : database.url
  return withClient(url, async (client) => {
    const { rows } = await client.query<{ version: number; now: Date }>(
      `select current_setting('server_version_num')::int as version, clock_timestamp() as now`,
    )
    const applied = await readApplied(client)
    return {
      format: 1,
      kind: database.kind,
      madeAt: (rows[0]?.now ?? new Date()).toISOString(),
      postgres: String(Math.floor((rows[0]?.version ?? 0) / 10_000)),
      migrations: (applied ?? []).map(({ name, checksum }) => ({ name, checksum })),
      timeZone: applied === undefined ? 'UTC' : await readTimeZone(client),
    }
  })
}

/** The zone of the first shop's first place, by which its days are counted. */
async function readTimeZone(client: Client): Promise<string> {
  const { rows } = await client.query<{ zone: string }>(
    `select l.time_zone as zone from shops s join locations l on l.shop_id = s.id
     order by s.created_at, s.id, l.name, l.id limit 1`,
  )
  return rows[0]?.zone ?? 'UTC'
}

/** Speaks at each tenth of the way. */
function inSteps(progress: BackupToMake['progress']): (done: number, of: number) => void {
  let said = 0
  return (done, of) => {
    const tenths = Math.floor((done * 10) / Math.max(of, 1))
    if (tenths <= said) return
    said = tenths
    progress(`${tenths * 10} % of ${Math.ceil(of / 1_000_000)} MB`)
  }
}

const jsonOf = (value: unknown): Buffer => Buffer.from(`${JSON.stringify(value, null, 1)}\n`)
