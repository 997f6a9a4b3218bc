import type { Kept } from './kept.ts'
import { canMakeKeys, indexedDbKeys, type KeyStore } from './key-store.ts'
import { afterContact, afterWait, isTooLongAgo, type LastContact, timeNow } from './last-contact.ts'

/** The key was dropped, or there never was one: nothing that was kept can be read, and nothing more is kept. */
export class VaultShut extends Error {
  override readonly name = 'VaultShut'
}

export type Vault = {
  /** @throws VaultShut */
  readonly seal: (value: unknown) => Promise<Kept>
  /** The value, as it would come out of JSON. @throws VaultShut */
  readonly open: (kept: Kept) => Promise<unknown>
  /** The same for bytes. @throws VaultShut */
  readonly sealBytes: (bytes: ArrayBuffer) => Promise<Kept>
  readonly openBytes: (kept: Kept) => Promise<ArrayBuffer>
  /** The server knows this tablet. Gives whether the vault was shut until now, or new. */
  readonly contactMade: (contact: { readonly serverAt: number; readonly hours: number }) => Promise<boolean>
  /** Whether it opens now. One that was out of the server's reach for too long shuts for good. */
  readonly isOpen: () => Promise<boolean>
  /** The server's time as far as this tablet knows, in milliseconds since 1970; `null` before the first contact. */
  readonly timeNow: () => Promise<number | null>
  /** Drops the key: whatever was kept can never be read here again. */
  readonly shut: () => Promise<void>
}

const key = 'vault'
const contact = 'last-contact'

export const makeVault = (store: KeyStore, deviceNow: () => number): Vault => {
  const lastContact = async () => ((await store.get(contact)) as LastContact | undefined) ?? null

  const shut = () => store.drop(key)

  /** Adds up the time that has passed since the last contact; shuts where that is too long. Gives whether it did. */
  const addUp = async (
    before: LastContact,
  ): Promise<{ readonly now: LastContact; readonly isOver: boolean }> => {
    const now = afterWait(before, deviceNow())
    // Written down every minute: it is asked for with every entry.
    if (now.since - before.since >= 60_000 || now.deviceAt < before.deviceAt) await store.put(contact, now)
    const isOver = isTooLongAgo(now)
    if (isOver) {
      await store.put(contact, now)
      await shut()
    }
    return { now, isOver }
  }

  const wait = async (): Promise<LastContact | null> => {
    const before = await lastContact()
    return before && (await addUp(before)).now
  }

  /** Both are read at once, and each time: another page of this tablet may have dropped the key. */
  const ownKey = async (): Promise<CryptoKey> => {
    const [before, own] = await store.getAll([contact, key])
    const isOver = before !== undefined && (await addUp(before as LastContact)).isOver
    if (own === undefined || isOver) throw new VaultShut()
    return own as CryptoKey
  }

  const sealBytes = async (bytes: BufferSource): Promise<Kept> => {
    const nonce = crypto.getRandomValues(new Uint8Array(12))
    return {
      is: 'sealed',
      nonce,
      bytes: await crypto.subtle.encrypt({ name: 'AES-GCM', iv: nonce }, await ownKey(), bytes),
    }
  }

  const openBytes = async ({ nonce, bytes }: Extract<Kept, { is: 'sealed' }>): Promise<ArrayBuffer> => {
    const own = await ownKey()
    try {
      return await crypto.subtle.decrypt({ name: 'AES-GCM', iv: nonce }, own, bytes)
    } catch (cause) {
      // Sealed under a key that was dropped.
      throw new VaultShut(undefined, { cause })
    }
  }

  return {
    shut,
    seal: async (value) =>
      canMakeKeys() ? sealBytes(new TextEncoder().encode(JSON.stringify(value))) : { is: 'plain', value },
    open: async (kept) =>
      kept.is === 'plain' ? kept.value : JSON.parse(new TextDecoder().decode(await openBytes(kept))),
    sealBytes: async (bytes) => (canMakeKeys() ? sealBytes(bytes) : { is: 'plain', value: bytes }),
    openBytes: async (kept) => (kept.is === 'plain' ? (kept.value as ArrayBuffer) : openBytes(kept)),
    contactMade: async (heard) => {
      await store.put(contact, afterContact(await lastContact(), heard, deviceNow()))
      await wait()
      if (!canMakeKeys() || (await store.get(key)) !== undefined) return false
      const made = await crypto.subtle.generateKey({ name: 'AES-GCM', length: 256 }, false, [
        'encrypt',
        'decrypt',
      ])
      await store.put(key, made)
      return true
    },
    isOpen: async () => {
      if (!canMakeKeys()) return true
      await wait()
      return (await store.get(key)) !== undefined
    },
    timeNow: async () => {
      const now = await wait()
      return now && timeNow(now)
    },
  }
}

/** This tablet's vault. */
export const tabletVault = makeVault(indexedDbKeys, Date.now)
