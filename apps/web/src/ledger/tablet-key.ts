import { canMakeKeys, indexedDbKeys, type KeyStore } from './key-store.ts'

/** The tablet's own key pair: its private half never leaves the browser, not even to this program. */
export type TabletKey = {
  /** Makes a pair for an enrollment that is about to be asked for; gives its public half, `null` where none can be made. */
  readonly prepare: () => Promise<string | null>
  /** The server has enrolled this tablet: the pair that was prepared for it is the tablet's from now on. */
  readonly adopt: (deviceId: string) => Promise<void>
  /** The public half of this tablet's pair; one that was enrolled without makes it now. `null` where none can be made. */
  readonly publicKeyOf: (deviceId: string) => Promise<string | null>
  /** The enrollment that the pair belongs to; `null` where this tablet has none. */
  readonly deviceId: () => Promise<string | null>
  /** The signature of this tablet under a text; `null` where it has no key. */
  readonly sign: (deviceId: string, text: string) => Promise<string | null>
}

type KeptPair = { readonly deviceId: string | null; readonly pair: CryptoKeyPair }

const algorithm = { name: 'ECDSA', namedCurve: 'P-256' } as const
const kept = 'signing'
const prepared = 'signing-next'

export const makeTabletKey = (store: KeyStore): TabletKey => {
  const read = async (name: string) => (await store.get(name)) as KeptPair | undefined

  const makePair = async (deviceId: string | null, name: string): Promise<CryptoKeyPair> => {
    const pair = await crypto.subtle.generateKey(algorithm, false, ['sign', 'verify'])
    await store.put(name, { deviceId, pair })
    return pair
  }

  const ownPair = async (deviceId: string): Promise<CryptoKeyPair | null> => {
    const own = await read(kept)
    return own?.deviceId === deviceId ? own.pair : null
  }

  return {
    prepare: async () => (canMakeKeys() ? exported(await makePair(null, prepared)) : null),
    adopt: async (deviceId) => {
      if ((await ownPair(deviceId)) !== null) return
      const next = await read(prepared)
      if (next === undefined) return
      await store.put(kept, { deviceId, pair: next.pair })
      await store.drop(prepared)
    },
    publicKeyOf: async (deviceId) =>
      canMakeKeys() ? exported((await ownPair(deviceId)) ?? (await makePair(deviceId, kept))) : null,
    deviceId: async () => (await read(kept))?.deviceId ?? null,
    sign: async (deviceId, text) => {
      const pair = await ownPair(deviceId)
      if (pair === null) return null
      const signature = await crypto.subtle.sign(
        { name: 'ECDSA', hash: 'SHA-256' },
        pair.privateKey,
        new TextEncoder().encode(text),
      )
      return base64Of(signature).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')
    },
  }
}

const exported = async ({ publicKey }: CryptoKeyPair): Promise<string> =>
  base64Of(await crypto.subtle.exportKey('spki', publicKey))

const base64Of = (bytes: ArrayBuffer): string => btoa(String.fromCharCode(...new Uint8Array(bytes)))

export const tabletKey = makeTabletKey(indexedDbKeys)
