import { createHmac, hash } from 'node:crypto'

/** SHA-256 of UTF-8 text, lower-case hexadecimal, by the processor's own instructions: the server hashes every entry. */
export const sha256Hex = (text: string): string => hash('sha256', text, 'hex')

/** HMAC-SHA-256 of UTF-8 text under a key, lower-case hexadecimal. */
export const hmacSha256Hex = (text: string, key: Uint8Array): string =>
  createHmac('sha256', key).update(text).digest('hex')
