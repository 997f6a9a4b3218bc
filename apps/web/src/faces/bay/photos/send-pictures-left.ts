import { indexedDbPictures } from '../../../ledger/indexed-db-pictures.ts'
import { loadPictures } from './load-pictures.ts'
import { countPictures } from './picture-count.ts'

/** Photos left from before the page was loaded are sent on. What sends them is loaded only where there are any. */
export const sendPicturesLeft = async (): Promise<void> => {
  const waiting = await indexedDbPictures.digests()
  countPictures({ isRead: true, waiting, refused: [] })
  if (waiting.length > 0) await loadPictures()
}
