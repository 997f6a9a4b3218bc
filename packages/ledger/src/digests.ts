import canonicalize from 'canonicalize'
import { hmacSha256Hex, sha256Hex } from '#hashing'

export { sha256Hex }

/** The canonical text (RFC 8785) of a value: the bytes that hashes are taken over and payloads are stored as. */
export const canonicalText = (value: unknown): string => {
  const text = canonicalize(value)
  if (text === undefined) throw new TypeError('a value without a JSON form cannot be kept in a ledger')
  return text
}

/** SHA-256 of a value's canonical text: the name of an estimate or of evidence by its content. */
export const digestOf = (value: unknown): string => sha256Hex(canonicalText(value))

/** HMAC-SHA-256 (RFC 2104) of a side under its own 32-byte salt, lower-case hexadecimal. */
export const sideDigest = (text: string, salt: Uint8Array): string => hmacSha256Hex(text, salt)
