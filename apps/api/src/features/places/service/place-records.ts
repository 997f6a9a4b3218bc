import type { PlaceContent } from '@bayledger/contract/places'
import type { Prisma } from '@bayledger/db/generated/client'
import type { Kept, RecordStore } from '../../../core/record-versions.ts'
import { refuseFields } from '../../../core/refused-fields.ts'
import { registerWords } from '../../../words/doubt-words.ts'
import * as store from '../store.ts'

/** People and files know a place by its name, in whichever case; two who save at once wait for one another. */
const refuseNameOfAnother = async (
  tx: Prisma.TransactionClient,
  shopId: string,
  { id, content: { name } }: Kept<PlaceContent>,
): Promise<void> => {
  await store.lockNames(tx, shopId)
  const isTaken = (await store.listPlaces(tx, shopId)).some(
    (other) => other.id !== id && other.content.name.toLowerCase() === name.toLowerCase(),
  )
  refuseFields(isTaken ? [{ field: 'content.name', found: name, allowed: registerWords.freeName }] : [])
}

/** How places are read and written, each under a name of its own. */
export const placeRecords: RecordStore<PlaceContent> = {
  ...store.placeRecords,
  insert: async (tx, shopId, kept, at) => {
    await refuseNameOfAnother(tx, shopId, kept)
    await store.placeRecords.insert(tx, shopId, kept, at)
  },
  update: async (tx, shopId, kept, at) => {
    await refuseNameOfAnother(tx, shopId, kept)
    await store.placeRecords.update(tx, shopId, kept, at)
  },
}
