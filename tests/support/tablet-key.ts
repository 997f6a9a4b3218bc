import { generateKeyPairSync, type KeyObject, sign } from 'node:crypto'
import type { SignedParcel } from '@bayledger/contract/parcels'
import { parcelText } from '@bayledger/ledger/tablet-signing'
import { passingSealingKey } from '../../apps/api/src/sealing-key.ts'

/** A key to which another service's tablets seal. */
export const otherSealingKey = passingSealingKey

/** A key as a tablet's browser makes one, in the forms in which it travels. */
export type TabletKey = {
  readonly publicKey: string
  readonly sign: (text: string) => string
}

export const makeTabletKey = (): TabletKey => {
  const { publicKey, privateKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' })
  return {
    publicKey: publicKey.export({ type: 'spki', format: 'der' }).toString('base64'),
    sign: (text) => signWith(privateKey, text),
  }
}

const signWith = (key: KeyObject, text: string): string =>
  sign('sha256', Buffer.from(text), { key, dsaEncoding: 'ieee-p1363' }).toString('base64url')

/** Entries of one person as this tablet hands them in. */
export const signedParcel = (
  key: TabletKey,
  deviceId: string,
  { staffId, entries, sides = [] }: Omit<SignedParcel, 'signature' | 'sides'> & Partial<SignedParcel>,
): SignedParcel => ({
  staffId,
  entries,
  sides,
  signature: key.sign(parcelText({ deviceId, staffId, entries })),
})
