import { existsSync, readdirSync, statSync } from 'node:fs'
import { open } from 'node:fs/promises'
import { join } from 'node:path'
import { BackupProblem } from './backup-problem.ts'
import { partOf, wholeOf } from './keep-log.ts'
import { parseSegmentName, segmentName, segmentPattern } from './log-position.ts'
import { readSealed } from './sealed-file.ts'

/**
 * Puts the log that was kept in a line's folder after a backup into the copied cluster, as far as it goes on without a
 * gap. Gives the number of its files.
 */
export async function restoreLog(
  folder: string,
  /** The cluster's own log, as the backup holds it. */
  clusterLog: string,
  identities: readonly string[],
): Promise<number> {
  const newest = readdirSync(clusterLog)
    .filter((name) => segmentPattern.test(name))
    .toSorted()
    .at(-1)
  if (newest === undefined)
    throw new BackupProblem(`There is no log in ${clusterLog}: the backup is not whole.`)
  const segmentBytes = statSync(join(clusterLog, newest)).size
  const { timeline, number: first } = parseSegmentName(newest, segmentBytes)
  for (let number = first; ; number += 1n) {
    const name = segmentName({ timeline, number }, segmentBytes)
    const kept = [wholeOf(name), partOf(name)]
      .map((file) => join(folder, file))
      .find((file) => existsSync(file))
    if (kept === undefined) return Number(number - first)
    await unpackSegment(kept, join(clusterLog, name), segmentBytes, identities)
  }
}

/** Of two copies of one file each is the beginning of the same log: writing one over the other keeps the longer. */
async function unpackSegment(
  kept: string,
  place: string,
  segmentBytes: number,
  identities: readonly string[],
): Promise<void> {
  const handle = await open(place, existsSync(place) ? 'r+' : 'w', 0o600)
  try {
    await handle.truncate(segmentBytes)
    let at = 0
    for await (const piece of readSealed(kept, identities)) {
      await handle.write(piece, 0, piece.length, at)
      at += piece.length
    }
  } finally {
    await handle.close()
  }
}
