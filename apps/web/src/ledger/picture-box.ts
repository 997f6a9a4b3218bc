import { sealBox } from '@bayledger/ledger/sealed-box'
import { photoText } from '@bayledger/ledger/tablet-signing'
import { keptServerKey } from './server-key.ts'
import { tabletKey } from './tablet-key.ts'

/**
 * The key of a picture sealed to the server, signed by this tablet: with it the picture can still be handed in when this
 * tablet can read nothing any more. `null` where the tablet has no key, or has never heard the server's.
 */
export const pictureBoxOf = async (digest: string, key: string): Promise<string | null> => {
  const [publicKey, deviceId] = await Promise.all([keptServerKey(), tabletKey.deviceId()])
  if (deviceId === null || publicKey === null) return null
  const signature = await tabletKey.sign(deviceId, photoText({ deviceId, digest }))
  if (signature === null) return null
  return sealBox(publicKey, JSON.stringify({ deviceId, digest, key, signature }))
}
