import { tellUnsent as endpoint } from '@bayledger/contract/devices'
import { waitingCount } from '../../../ledger/indexed-db-parcels.ts'
import { indexedDbPictures } from '../../../ledger/indexed-db-pictures.ts'
import { call } from '../../../lib/api-client.ts'

/** Tells the server what is on this tablet's disk and not sent, for whoever looks after the tablets. */
export const tellUnsent = async (): Promise<void> => {
  const [entries, pictures] = await Promise.all([waitingCount(), indexedDbPictures.digests()])
  await call(endpoint, { body: { entries, photos: pictures.length } })
}
