import { fromBase64, toBase64 } from './sealed-box.ts'

/**
 * Bytes under a key of their own: AES-256-GCM (NIST SP 800-38D), the nonce first. The key, in base64, is small: it can be
 * sealed once more for everyone who may read them, and the bytes lie there once.
 */
export type SealedBytes = { readonly key: string; readonly bytes: Uint8Array<ArrayBuffer> }

const cipher = 'AES-GCM'
const nonceBytes = 12

export const sealBytes = async (plain: Uint8Array<ArrayBuffer>): Promise<SealedBytes> => {
  const raw = globalThis.crypto.getRandomValues(new Uint8Array(32))
  const nonce = globalThis.crypto.getRandomValues(new Uint8Array(nonceBytes))
  const sealed = await globalThis.crypto.subtle.encrypt({ name: cipher, iv: nonce }, await keyOf(raw), plain)
  const bytes = new Uint8Array(nonceBytes + sealed.byteLength)
  bytes.set(nonce)
  bytes.set(new Uint8Array(sealed), nonceBytes)
  return { key: toBase64(raw), bytes }
}

/** The bytes as they were; `null` where the key is another one, or something was changed. */
export const openBytes = async ({ key, bytes }: SealedBytes): Promise<Uint8Array<ArrayBuffer> | null> => {
  try {
    const iv = bytes.slice(0, nonceBytes)
    const own = await keyOf(fromBase64(key))
    return new Uint8Array(
      await globalThis.crypto.subtle.decrypt({ name: cipher, iv }, own, bytes.slice(nonceBytes)),
    )
  } catch {
    return null
  }
}

const keyOf = (raw: Uint8Array<ArrayBuffer>): Promise<CryptoKey> =>
  globalThis.crypto.subtle.importKey('raw', raw, cipher, false, ['encrypt', 'decrypt'])
