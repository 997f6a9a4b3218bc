import canonicalize from 'canonicalize'
import type { Entry } from './entry.ts'
import { noHash } from './entry.ts'

/** The canonical text (RFC 8785) of a value: the bytes that hashes are taken over and payloads are stored as. */
export const canonicalText = (value: unknown): string => {
  const text = canonicalize(value)
  if (text === undefined) throw new TypeError('a value without a JSON form cannot stand in a ledger')
  return text
}

const encoder = new TextEncoder()

const toHex = (bytes: ArrayBuffer): string =>
  Array.from(new Uint8Array(bytes), (byte) => byte.toString(16).padStart(2, '0')).join('')

/** SHA-256 (FIPS 180-4) of UTF-8 text, lower-case hexadecimal. */
export const sha256Hex = async (text: string): Promise<string> =>
  toHex(await globalThis.crypto.subtle.digest('SHA-256', encoder.encode(text)))

/** SHA-256 of a value's canonical text: how estimates and evidence are named by their content. */
export const digestOf = (value: unknown): Promise<string> => sha256Hex(canonicalText(value))

/** HMAC-SHA-256 (RFC 2104) of personal text under its own 32-byte salt, lower-case hexadecimal. */
export const personalDigest = async (text: string, salt: Uint8Array<ArrayBuffer>): Promise<string> => {
  const key = await globalThis.crypto.subtle.importKey(
    'raw',
    salt,
    { name: 'HMAC', hash: 'SHA-256' },
    false,
    ['sign'],
  )
  return toHex(await globalThis.crypto.subtle.sign('HMAC', key, encoder.encode(text)))
}

export type Unhashed = Omit<Entry, 'hash'>

/** The hash of one entry: over everything it says, the hash of the entry before included. */
export const hashEntry = (entry: Unhashed): Promise<string> => digestOf(entry)

export type ChainVerdict =
  | { readonly whole: true }
  | { readonly whole: false; readonly brokenAtSeq: number; readonly words: string }

/** Walks a whole order's chain; a changed byte anywhere is named at the entry where it stands. */
export const verifyChain = async (entries: readonly Entry[]): Promise<ChainVerdict> => {
  let previousHash = noHash
  for (const [index, entry] of entries.entries()) {
    const { hash, ...rest } = entry
    const seq = index + 1
    if (entry.seq !== seq) return broken(seq, `entry ${seq} is missing or out of place`)
    if (entry.previousHash !== previousHash)
      return broken(seq, `entry ${seq} does not follow the entry before it`)
    if ((await hashEntry(rest as Unhashed)) !== hash)
      return broken(seq, `entry ${seq} was changed after it was written`)
    previousHash = hash
  }
  return { whole: true }
}

const broken = (brokenAtSeq: number, words: string): ChainVerdict => ({ whole: false, brokenAtSeq, words })
