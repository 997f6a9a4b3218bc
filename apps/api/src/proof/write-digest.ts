import type { Pool } from 'pg'
import { type DigestFile, signDigest } from './digest.ts'
import { type FoundDigest, listDigestFiles, writeDigestFile } from './digest-folder.ts'
import { DigestProblem, keptDigestKey } from './digest-key.ts'
import { listDigestNotes, listNewestEntries, lockDigests, noteDigest } from './digest-notes.ts'

export type DigestPlaces = { readonly digestFolder: string; readonly dataFolder: string }

const noDigest = '0'.repeat(64)

/**
 * Writes the next digest of a shop over every order that moved since the last, or nothing where none did. The file comes
 * first and the database's note of it second; a note that a crash prevented is made up for by the next run.
 */
export const writeDigest = async (
  pool: Pool,
  places: DigestPlaces,
  asked: { readonly shopId: string; readonly day: string; readonly at: string },
): Promise<DigestFile | null> => {
  const { shopId, day, at } = asked
  const connection = await pool.connect()
  try {
    await connection.query('begin')
    await lockDigests(connection, shopId)
    const files = listDigestFiles(places.digestFolder, shopId)
    const notes = await listDigestNotes(connection, shopId)
    const key = keptDigestKey(places.dataFolder, files.length > 0 || notes.length > 0)
    for (const { number, digest, file } of files) {
      if (number <= (notes.at(-1)?.number ?? 0)) continue
      if (digest === null || digest.number !== number)
        throw new DigestProblem(
          `${file} is not a digest of this shop. Move it away; npm run -s ledger:verify says more.`,
        )
      await noteDigest(connection, digest)
      notes.push({ number, hash: digest.hash })
    }
    const last = notes.at(-1) ?? { number: 0, hash: noDigest }
    const covered = newestCovered(files)
    const moved = (await listNewestEntries(connection, shopId)).filter(
      ({ orderId, seq }) => seq > (covered.get(orderId) ?? 0),
    )
    const written =
      moved.length === 0
        ? null
        : signDigest(
            {
              format: 1,
              shopId,
              number: last.number + 1,
              day,
              madeAt: at,
              previous: last.hash,
              orders: moved,
            },
            key,
          )
    if (written) {
      writeDigestFile(places.digestFolder, written)
      await noteDigest(connection, written)
    }
    await connection.query('commit')
    return written
  } catch (error) {
    await connection.query('rollback').catch(() => undefined)
    throw error
  } finally {
    connection.release()
  }
}

/** The number of the newest entry of each order that a digest covers. */
export const newestCovered = (files: readonly FoundDigest[]): ReadonlyMap<string, number> =>
  new Map(
    files.flatMap(({ digest }) => (digest?.orders ?? []).map(({ orderId, seq }) => [orderId, seq] as const)),
  )
