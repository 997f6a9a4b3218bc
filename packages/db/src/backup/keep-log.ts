import { existsSync, mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import type { Client } from 'pg'
import { withClient } from '../with-client.ts'
import { logFolder } from './backup-folder.ts'
import { clearUnfinished } from './clear-unfinished.ts'
import { type LogPosition, parsePosition, segmentAt, segmentName } from './log-position.ts'
import { advanceSlot, keptSlot } from './log-slot.ts'
import { readUpTo } from './read-up-to.ts'
import { writeSealed } from './sealed-file.ts'

export type LogToKeep = {
  readonly superuserUrl: string
  /** The folder of the backups. */
  readonly folder: string
  readonly recipients: readonly string[]
  /** Copies what belongs to the shop and is no row into the line's folder; called once the end of this round is fixed. */
  readonly keepFiles: (folder: string) => Promise<void>
}

/** Up to where a line is copied. */
export type KeptLog = { readonly line: string; readonly upTo: LogPosition }

/**
 * Copies what PostgreSQL's log has gained since the round before, encrypted, beside the backups: each whole file once,
 * and of the file that is being written what is in it. `before` is what the last round gave. After it returns, nothing
 * committed before it was called is lost with the disk of the database.
 */
export function keepLog(log: LogToKeep, before: KeptLog | null): Promise<KeptLog> {
  return withClient(log.superuserUrl, async (client) => {
    const slot = await keptSlot(client)
    const { end, timeline, segmentBytes, cluster } = await endOfLog(client)
    if (before?.line === slot.line && before.upTo === end) return before
    const folder = logFolder(log.folder, slot.line)
    mkdirSync(folder, { recursive: true, mode: 0o700 })
    if (before === null) clearUnfinished(folder)
    await log.keepFiles(folder)
    const last = segmentAt(timeline, end, segmentBytes)
    for (let { number } = segmentAt(timeline, slot.from, segmentBytes); number <= last.number; number += 1n) {
      const name = segmentName({ timeline, number }, segmentBytes)
      const source = join(cluster, 'pg_wal', name)
      if (number === last.number)
        await copySegment(
          source,
          Number(end % BigInt(segmentBytes)),
          join(folder, partOf(name)),
          log.recipients,
        )
      else await keepWhole(source, segmentBytes, folder, name, log.recipients)
    }
    await advanceSlot(client, slot, last.number * BigInt(segmentBytes))
    return { line: slot.line, upTo: end }
  })
}

/** The file of a segment that is whole, and of one that was still being written. */
export const wholeOf = (segment: string): string => `${segment}.age`
export const partOf = (segment: string): string => `${segment}.part.age`

async function keepWhole(
  source: string,
  bytes: number,
  folder: string,
  name: string,
  recipients: readonly string[],
): Promise<void> {
  if (!existsSync(join(folder, wholeOf(name))))
    await copySegment(source, bytes, join(folder, wholeOf(name)), recipients)
  rmSync(join(folder, partOf(name)), { force: true })
}

function copySegment(
  source: string,
  bytes: number,
  file: string,
  recipients: readonly string[],
): Promise<void> {
  return writeSealed(file, recipients, async (put) => {
    for await (const piece of readUpTo(source, bytes)) await put(piece)
  })
}

async function endOfLog(
  client: Client,
): Promise<{ end: LogPosition; timeline: number; segmentBytes: number; cluster: string }> {
  const { rows } = await client.query<{ end: string; timeline: number; bytes: string; cluster: string }>(
    `select pg_current_wal_flush_lsn() as "end", (select timeline_id from pg_control_checkpoint()) as timeline,
            (select setting from pg_settings where name = 'wal_segment_size') as bytes,
            current_setting('data_directory') as cluster`,
  )
  const row = rows[0]
  return {
    end: parsePosition(row?.end ?? ''),
    timeline: row?.timeline ?? 1,
    segmentBytes: Number(row?.bytes),
    cluster: row?.cluster ?? '',
  }
}
