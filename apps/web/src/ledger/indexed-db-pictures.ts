import type { Kept } from './kept.ts'
import { canMakeKeys } from './key-store.ts'
import type { KeptPicture, PictureStore } from './picture.ts'
import { tabletDatabase } from './tablet-database.ts'
import { tabletVault, VaultShut } from './vault.ts'

/** Browsers confirm a write before it is on the disk unless they are set to wait: a power cut then loses it. */
const strict = { durability: 'strict' } as const

const change = async () => (await tabletDatabase()).transaction('pictures', 'readwrite', strict)

type Row = Pick<KeptPicture, 'orderId' | 'mediaType'> &
  (
    | {
        /** Of the bytes, which lie under a key of their own. */
        readonly key: Kept
        readonly bytes: Uint8Array<ArrayBuffer>
        /** The same key, sealed to the server. */
        readonly box: string | null
      }
    /** As it was kept before, and where the browser has no cryptography. */
    | { readonly kept: Kept }
  )

/** Pictures in IndexedDB, sealed; the digest of each is its key. */
export const indexedDbPictures: PictureStore = {
  keep: async (picture) => {
    const row = await rowOf(picture)
    const changing = await change()
    await changing.store.put(row, picture.digest)
    await changing.done
  },
  digests: async () => (await tabletDatabase()).getAllKeys('pictures'),
  find: async (digest) => {
    const row = await rowAt(digest)
    if (row === undefined) return null
    const { orderId, mediaType } = row
    return { orderId, mediaType, digest, bytes: await bytesOf(row) }
  },
  drop: async (digest) => {
    const changing = await change()
    await changing.store.delete(digest)
    await changing.done
  },
}

/** A picture as only the server opens it; `null` where it was not sealed to the server, or is not here. */
export const boxedPicture = async (
  digest: string,
): Promise<{ readonly box: string; readonly bytes: Uint8Array<ArrayBuffer> } | null> => {
  const row = await rowAt(digest)
  return row !== undefined && 'box' in row && row.box !== null ? { box: row.box, bytes: row.bytes } : null
}

/** What seals is loaded with the first picture: the list of vehicles does not need it. */
const loadSeals = async () => {
  const [{ openBytes, sealBytes }, { pictureBoxOf }] = await Promise.all([
    import('@bayledger/ledger/sealed-bytes'),
    import('./picture-box.ts'),
  ])
  return { openBytes, sealBytes, pictureBoxOf }
}

const rowAt = async (digest: string): Promise<Row | undefined> =>
  (await (await tabletDatabase()).get('pictures', digest)) as Row | undefined

const rowOf = async ({ orderId, mediaType, digest, bytes }: KeptPicture): Promise<Row> => {
  const plain = bytes.slice()
  if (!canMakeKeys()) return { orderId, mediaType, kept: await tabletVault.sealBytes(plain.buffer) }
  const { sealBytes, pictureBoxOf } = await loadSeals()
  const sealed = await sealBytes(plain)
  const [key, box] = await Promise.all([tabletVault.seal(sealed.key), pictureBoxOf(digest, sealed.key)])
  return { orderId, mediaType, key, bytes: sealed.bytes, box }
}

const bytesOf = async (row: Row): Promise<Uint8Array> => {
  if ('kept' in row) return new Uint8Array(await tabletVault.openBytes(row.kept))
  const { openBytes } = await loadSeals()
  const bytes = await openBytes({ key: String(await tabletVault.open(row.key)), bytes: row.bytes })
  if (bytes === null) throw new VaultShut()
  return bytes
}
