import { indexedDbPictures } from '../../../ledger/indexed-db-pictures.ts'
import { loadPictures } from './load-pictures.ts'

/** Photos left from before the page was loaded are sent on. What sends them is loaded only where there are any. */
export const sendPicturesLeft = async (): Promise<void> => {
  if ((await indexedDbPictures.digests()).length > 0) await loadPictures()
}
