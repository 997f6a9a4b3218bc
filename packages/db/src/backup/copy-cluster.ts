import { randomBytes } from 'node:crypto'
import { join } from 'node:path'
import type { Client } from 'pg'
import { withClient } from '../with-client.ts'
import type { ArchiveWriter } from './archive-writer.ts'
import { BackupProblem } from './backup-problem.ts'
import { listClusterFiles } from './cluster-files.ts'
import { type CountedRecord, countRecordAtMark } from './count-record.ts'
import { parsePosition, parseSegmentName, type Segment, segmentAt, segmentName } from './log-position.ts'
import { readUpTo } from './read-up-to.ts'

export type ClusterToCopy = {
  /** The superuser's address; the database in it does not matter. */
  readonly superuserUrl: string
  /** The database whose record is counted. */
  readonly database: string
  /** Hears how much of the files is copied, in bytes. */
  readonly progress: (done: number, of: number) => void
}

export type CopiedCluster = CountedRecord & {
  /** The file of the log with which recovery begins. */
  readonly firstSegment: string
}

/**
 * Copies the files of a running PostgreSQL of this machine into an archive, below `postgres/`, with the part of its log
 * that makes them consistent, up to a mark at which the record is counted. The shop goes on writing meanwhile.
 *
 * @source PostgreSQL manual, 25.3.4 Making a Base Backup Using the Low Level API.
 */
export function copyCluster(archive: ArchiveWriter, cluster: ClusterToCopy): Promise<CopiedCluster> {
  return withClient(cluster.superuserUrl, async (client) => {
    const name = `bayledger_copy_${randomBytes(6).toString('hex')}`
    // The slot keeps the log from being recycled under us; it goes with the connection.
    await client.query('select pg_create_physical_replication_slot($1, true, true)', [name])
    await client.query('select pg_backup_start($1, fast => true)', [name])
    const { folder, segmentBytes } = await placesOf(client)
    await copyFiles(archive, folder, cluster.progress)
    const { rows } = await client.query<{ label: string }>(
      'select labelfile as label from pg_backup_stop(wait_for_archive => false)',
    )
    const label = rows[0]?.label ?? ''
    await archive.addBytes('postgres/backup_label', Buffer.from(label))
    const counted = await countRecordAtMark(shopUrl(cluster), name)
    const first = firstSegmentOf(label, segmentBytes)
    await copyLog(archive, { client, folder, segmentBytes, first })
    return { ...counted, firstSegment: segmentName(first, segmentBytes) }
  })
}

/** The superuser's address to the shop's database. */
export function shopUrl(cluster: Pick<ClusterToCopy, 'superuserUrl' | 'database'>): string {
  const url = new URL(cluster.superuserUrl)
  url.pathname = `/${cluster.database}`
  return url.href
}

async function placesOf(client: Client): Promise<{ folder: string; segmentBytes: number }> {
  const { rows } = await client.query<{ folder: string; bytes: string }>(
    `select current_setting('data_directory') as folder,
            (select setting from pg_settings where name = 'wal_segment_size') as bytes`,
  )
  return { folder: rows[0]?.folder ?? '', segmentBytes: Number(rows[0]?.bytes) }
}

async function copyFiles(
  archive: ArchiveWriter,
  folder: string,
  progress: ClusterToCopy['progress'],
): Promise<void> {
  const files = listClusterFiles(folder)
  const total = files.reduce((sum, file) => sum + (file.kind === 'file' ? file.bytes : 0), 0)
  let done = 0
  for (const file of files) {
    const path = `postgres/${file.path}`
    if (file.kind === 'folder') await archive.addFolder(path)
    else {
      await archive.addFile(path, file.bytes, unlessGone(readUpTo(join(folder, file.path), file.bytes)))
      done += file.bytes
      progress(done, total)
    }
  }
}

/** A file that was removed after it was listed is empty in the copy: the log removes it there too. */
async function* unlessGone(content: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  try {
    yield* content
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'ENOENT')) throw error
  }
}

/** The log from the first segment to what is on disk now; the last one only as far as it is written. */
async function copyLog(
  archive: ArchiveWriter,
  from: {
    readonly client: Client
    readonly folder: string
    readonly segmentBytes: number
    readonly first: Segment
  },
): Promise<void> {
  const { client, folder, segmentBytes, first } = from
  const { rows } = await client.query<{ position: string }>('select pg_current_wal_flush_lsn() as position')
  const end = parsePosition(rows[0]?.position ?? '')
  const last = segmentAt(first.timeline, end, segmentBytes)
  for (let { number } = first; number <= last.number; number += 1n) {
    const name = segmentName({ timeline: first.timeline, number }, segmentBytes)
    const written = number < last.number ? segmentBytes : Number(end % BigInt(segmentBytes))
    await archive.addFile(
      `postgres/pg_wal/${name}`,
      segmentBytes,
      readUpTo(join(folder, 'pg_wal', name), written),
    )
  }
}

function firstSegmentOf(label: string, segmentBytes: number): Segment {
  const name = /\(file ([0-9A-F]{24})\)/.exec(label)?.[1]
  if (name === undefined)
    throw new BackupProblem(`PostgreSQL gave a backup label that names no log: ${label}`)
  return parseSegmentName(name, segmentBytes)
}
