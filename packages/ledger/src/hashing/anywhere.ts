import { hmac } from '@noble/hashes/hmac.js'
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'

/**
 * SHA-256 (FIPS 180-4) of UTF-8 text, lower-case hexadecimal. It uses a library, because the browser's own
 * SHA-256 is asynchronous and missing outside a secure context; admitting an entry must be synchronous and work anywhere.
 */
export const sha256Hex = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)))

/** HMAC-SHA-256 (RFC 2104) of UTF-8 text under a key, lower-case hexadecimal. */
export const hmacSha256Hex = (text: string, key: Uint8Array): string =>
  bytesToHex(hmac(sha256, key, utf8ToBytes(text)))
