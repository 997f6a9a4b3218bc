import { sha256Hex } from '@bayledger/ledger/digests'
import { nominalNow } from './calendar.ts'

/**
 * An id shaped like a UUIDv7 (RFC 9562, 5.7), the same at every start: its time is the demo day's own and its
 * random bits are taken from the name. Real ids are made at random where an entry is written.
 */
export const demoId = (name: string): string => {
  const bits = sha256Hex(`tamber-street/id/${name}`)
  const time = nominalNow.toString(16).padStart(12, '0')
  const variant = ((Number.parseInt(bits.slice(3, 4), 16) & 0x3) | 0x8).toString(16)
  return `${time.slice(0, 8)}-${time.slice(8)}-7${bits.slice(0, 3)}-${variant}${bits.slice(4, 7)}-${bits.slice(7, 19)}`
}

/** 32 bytes that salt a personal text of the demo. Fixed, so that the demo's chains are: never fit for a real person's text. */
export const demoSalt = (name: string): Uint8Array =>
  Uint8Array.from(Buffer.from(sha256Hex(`tamber-street/salt/${name}`), 'hex'))
