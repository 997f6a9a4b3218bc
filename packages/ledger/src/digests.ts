import { hmac } from '@noble/hashes/hmac.js'
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import canonicalize from 'canonicalize'

/** The canonical text (RFC 8785) of a value: the bytes that hashes are taken over and payloads are stored as. */
export const canonicalText = (value: unknown): string => {
  const text = canonicalize(value)
  if (text === undefined) throw new TypeError('a value without a JSON form cannot be kept in a ledger')
  return text
}

/**
 * SHA-256 (FIPS 180-4) of UTF-8 text, lower-case hexadecimal. It uses a library, because the browser's own
 * SHA-256 is asynchronous and missing outside a secure context; admitting an entry must be synchronous and work anywhere.
 */
export const sha256Hex = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)))

/** SHA-256 of a value's canonical text: the name of an estimate or of evidence by its content. */
export const digestOf = (value: unknown): string => sha256Hex(canonicalText(value))

/** HMAC-SHA-256 (RFC 2104) of a side under its own 32-byte salt, lower-case hexadecimal. */
export const sideDigest = (text: string, salt: Uint8Array): string =>
  bytesToHex(hmac(sha256, salt, utf8ToBytes(text)))
