import { sealBox } from '@bayledger/ledger/sealed-box'
import { parcelText } from '@bayledger/ledger/tablet-signing'
import type { Parcel } from './parcel.ts'
import { keptServerKey } from './server-key.ts'
import { tabletKey } from './tablet-key.ts'

/**
 * A parcel sealed to the server, signed by this tablet: it can still be handed in when this tablet can read nothing any
 * more. `null` where the tablet has no key, or has never heard the server's.
 */
export const boxOf = async ({
  deviceId,
  staffId,
  entries,
  sides,
  heardSeq,
}: Parcel): Promise<string | null> => {
  const publicKey = await keptServerKey()
  if (deviceId === null || publicKey === null) return null
  const signature = await tabletKey.sign(deviceId, parcelText({ deviceId, staffId, entries }))
  if (signature === null) return null
  const heard = { seq: heardSeq, waited: true }
  return sealBox(publicKey, JSON.stringify({ deviceId, staffId, entries, sides, heard, signature }))
}
