import type { AppendResult } from '@bayledger/contract/entries'
import { handInParcel } from '@bayledger/contract/parcels'
import { parcelText } from '@bayledger/ledger/tablet-signing'
import type { Parcel } from '../../../ledger/parcel.ts'
import { tabletKey } from '../../../ledger/tablet-key.ts'
import { call } from '../../../lib/api-client.ts'

/**
 * Hands in what anybody wrote on this tablet, under its own signature, and gives what became of each entry; `null` where the
 * tablet has no key.
 */
export const handIn = async (
  { entries, sides, staffId, deviceId, heardSeq }: Parcel,
  waited: boolean,
): Promise<AppendResult[] | null> => {
  if (deviceId === null) return null
  const signature = await tabletKey.sign(deviceId, parcelText({ deviceId, staffId, entries }))
  if (signature === null) return null
  const { results } = await call(handInParcel, {
    body: {
      staffId,
      entries: [...entries],
      sides: [...sides],
      heard: { seq: heardSeq, waited },
      signature,
    },
  })
  return results
}
