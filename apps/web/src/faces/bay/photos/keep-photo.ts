import { loadPictures } from './load-pictures.ts'
import type { TakenPhoto } from './take-photo.ts'

/**
 * Keeps a photo's bytes, before any entry names it: an entry is never written of a photo that is not kept. Rejects where
 * the tablet has no room.
 */
export const keepPhoto = async (orderId: string, { bytes, facts }: TakenPhoto): Promise<void> => {
  const bayPictures = await loadPictures()
  await bayPictures.keep({ orderId, digest: facts.digest, mediaType: facts.picture.mediaType, bytes })
}

/** Photos that no entry will name. What cannot be forgotten now stays, and is asked about like any other. */
export const forgetPhotos = (photos: readonly { readonly digest: string }[]): void => {
  if (photos.length === 0) return
  void loadPictures().then(async (bayPictures) => {
    for (const { digest } of photos) await bayPictures.forget(digest)
  })
}
