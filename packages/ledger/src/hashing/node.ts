import { hash } from 'node:crypto'

/** SHA-256 of UTF-8 text, lower-case hexadecimal, by the processor's own instructions: the server hashes every entry. */
export const sha256Hex = (text: string): string => hash('sha256', text, 'hex')

/** The length of SHA-256's blocks, in bytes. */
const block = 64

/**
 * HMAC-SHA-256 of UTF-8 text under a key, lower-case hexadecimal. Written out (RFC 2104, 2), because making Node's own
 * HMAC object takes longer than admitting an entry.
 */
export const hmacSha256Hex = (text: string, key: Uint8Array): string => {
  const inner = Buffer.alloc(block, 0x36)
  const outer = Buffer.alloc(block, 0x5c)
  const short = key.length > block ? hash('sha256', key, 'buffer') : key
  for (const [index, byte] of short.entries()) {
    inner[index] = byte ^ 0x36
    outer[index] = byte ^ 0x5c
  }
  const digest = hash('sha256', Buffer.concat([inner, Buffer.from(text)]), 'buffer')
  return hash('sha256', Buffer.concat([outer, digest]), 'hex')
}
