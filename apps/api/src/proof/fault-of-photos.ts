import type { Entry } from '@bayledger/ledger/entry'
import type { Pool } from 'pg'
import { listErased, listReceivedPhotos, listSoundBlobs } from './read-proof.ts'

export type VerifiedPhotos = {
  readonly fault: { readonly seq: number; readonly what: string } | null
  /** Photos that entries name and whose bytes have not arrived: their tablet still holds them. */
  readonly awaited: number
}

/**
 * The bytes of each photo that has arrived, and the copy that is shown of it, against their digests. A photo that has
 * not arrived is no fault; one that has and is gone needs an erasure that names it.
 */
export const verifyPhotos = async (
  pool: Pool,
  shopId: string,
  entries: readonly Entry[],
): Promise<VerifiedPhotos> => {
  const named = new Map(
    entries.flatMap((entry) =>
      entry.kind === 'photo.attached' ? [[entry.payload.digest, entry.seq] as const] : [],
    ),
  )
  const digests = [...named.keys()]
  const received = await listReceivedPhotos(pool, shopId, digests)
  const erased = await listErased(pool, shopId, digests)
  const blobs = await listSoundBlobs(pool, shopId, [...received.keys(), ...received.values()])
  const awaited = digests.filter((digest) => !received.has(digest) && !erased.has(digest)).length
  for (const [digest, view] of received) {
    const seq = named.get(digest) ?? 0
    if (blobs.get(digest) === false)
      return { awaited, fault: { seq, what: 'the photo that it names is not the one that was received' } }
    if (erased.has(digest)) continue
    if (!blobs.has(digest))
      return { awaited, fault: { seq, what: 'the photo that it names is missing, and no erasure says why' } }
    if (blobs.get(view) !== true)
      return {
        awaited,
        fault: { seq, what: 'the copy of its photo that is shown is missing or was changed' },
      }
  }
  return { awaited, fault: null }
}
