import { handInSealedPhoto } from '@bayledger/contract/photos'
import { toBase64 } from '@bayledger/ledger/sealed-box'
import { waitingBoxes } from '../../../ledger/indexed-db-parcels.ts'
import { boxedPicture, indexedDbPictures } from '../../../ledger/indexed-db-pictures.ts'
import { call } from '../../../lib/api-client.ts'
import { isCallProblem } from '../../../lib/problem.ts'

/**
 * Hands in a photo that this tablet cannot read any more, as it is sealed to the server; gives whether the server took it.
 * Rejects where no answer comes.
 */
export const handInPicture = async (digest: string): Promise<boolean> => {
  const sealed = await boxedPicture(digest)
  if (sealed === null) return false
  try {
    await call(handInSealedPhoto, { body: { box: sealed.box, bytes: toBase64(sealed.bytes) } })
    return true
  } catch (thrown) {
    if (isCallProblem(thrown, 'SEALED_PHOTO_NOT_TAKEN')) return false
    throw thrown
  }
}

/**
 * The tablet is enrolled anew and cannot read what it kept before: what the server does not take of its photos, once it has
 * every entry, is given up. The screen before has said so.
 */
export const giveUpPictures = async (): Promise<void> => {
  await handInPictures()
  if ((await waitingBoxes()).length > 0) return
  for (const digest of await indexedDbPictures.digests()) await indexedDbPictures.drop(digest)
}

/** Hands in all of them; gives how many the server took. What it does not take stays on the tablet. */
export const handInPictures = (): Promise<number> =>
  navigator.locks.request('bayledger.pictures', async () => {
    let count = 0
    for (const digest of await indexedDbPictures.digests()) {
      if (!(await handInPicture(digest))) continue
      await indexedDbPictures.drop(digest)
      count += 1
    }
    return count
  })
