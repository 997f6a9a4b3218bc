/**
 * Text sealed to a public key, so that whoever sealed it cannot open it again: an ephemeral ECDH key over P-256, a key
 * from it by HKDF-SHA-256 (RFC 5869), AES-256-GCM (NIST SP 800-38D). Both sides use WebCrypto, which a browser has in
 * secure contexts only. A box is the ephemeral public key (65 bytes), the nonce (12 bytes) and the sealed bytes, in base64.
 */
const curve = { name: 'ECDH', namedCurve: 'P-256' } as const
const pointBytes = 65
const nonceBytes = 12
const purpose = new TextEncoder().encode('bayledger.sealed-parcel.1')

/** Seals text to a key that was exported as SubjectPublicKeyInfo in base64. */
export const sealBox = async (publicKey: string, text: string): Promise<string> => {
  const { subtle } = globalThis.crypto
  const server = await subtle.importKey('spki', fromBase64(publicKey), curve, true, [])
  const own = await subtle.generateKey(curve, true, ['deriveBits'])
  const ownPoint = new Uint8Array(await subtle.exportKey('raw', own.publicKey))
  const key = await sharedKey(own.privateKey, server, ownPoint)
  const nonce = globalThis.crypto.getRandomValues(new Uint8Array(nonceBytes))
  const sealed = await subtle.encrypt({ name: 'AES-GCM', iv: nonce }, key, new TextEncoder().encode(text))
  return toBase64(joined(ownPoint, nonce, new Uint8Array(sealed)))
}

/** The text of a box; `null` where it was not sealed to this key, or was changed. */
export const openBox = async (privateKey: CryptoKey, box: string): Promise<string | null> => {
  try {
    const bytes = fromBase64(box)
    const point = bytes.slice(0, pointBytes)
    const nonce = bytes.slice(pointBytes, pointBytes + nonceBytes)
    const { subtle } = globalThis.crypto
    const other = await subtle.importKey('raw', point, curve, true, [])
    const key = await sharedKey(privateKey, other, point)
    const text = await subtle.decrypt(
      { name: 'AES-GCM', iv: nonce },
      key,
      bytes.slice(pointBytes + nonceBytes),
    )
    return new TextDecoder('utf-8', { fatal: true }).decode(text)
  } catch {
    return null
  }
}

/** The ephemeral point is part of what the key is made from, so that a box fits one exchange only. */
const sharedKey = async (
  own: CryptoKey,
  other: CryptoKey,
  ephemeralPoint: Uint8Array<ArrayBuffer>,
): Promise<CryptoKey> => {
  const { subtle } = globalThis.crypto
  const secret = await subtle.deriveBits({ name: 'ECDH', public: other }, own, 256)
  const material = await subtle.importKey('raw', secret, 'HKDF', false, ['deriveKey'])
  return subtle.deriveKey(
    { name: 'HKDF', hash: 'SHA-256', salt: ephemeralPoint, info: purpose },
    material,
    { name: 'AES-GCM', length: 256 },
    false,
    ['encrypt', 'decrypt'],
  )
}

export const fromBase64 = (base64: string): Uint8Array<ArrayBuffer> => {
  const text = atob(base64)
  const bytes = new Uint8Array(text.length)
  for (let index = 0; index < text.length; index += 1) bytes[index] = text.charCodeAt(index)
  return bytes
}

export const toBase64 = (bytes: Uint8Array): string => {
  let text = ''
  for (let start = 0; start < bytes.length; start += 0x8000)
    text += String.fromCharCode(...bytes.subarray(start, start + 0x8000))
  return btoa(text)
}

const joined = (...parts: readonly Uint8Array[]): Uint8Array => {
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) {
    bytes.set(part, at)
    at += part.length
  }
  return bytes
}
