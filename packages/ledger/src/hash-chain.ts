import { hmac } from '@noble/hashes/hmac.js'
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import canonicalize from 'canonicalize'
import type { Entry, EntryOfKind } from './entry.ts'
import { noHash } from './entry.ts'
import type { Kind } from './registry.ts'

/** The canonical text (RFC 8785) of a value: the bytes that hashes are taken over and payloads are stored as. */
export const canonicalText = (value: unknown): string => {
  const text = canonicalize(value)
  if (text === undefined) throw new TypeError('a value without a JSON form cannot stand in a ledger')
  return text
}

/**
 * SHA-256 (FIPS 180-4) of UTF-8 text, lower-case hexadecimal. A library's rather than the browser's own, because
 * that one is asynchronous and missing outside a secure context, and admitting an entry must be neither.
 */
export const sha256Hex = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)))

/** SHA-256 of a value's canonical text: how estimates and evidence are named by their content. */
export const digestOf = (value: unknown): string => sha256Hex(canonicalText(value))

/** HMAC-SHA-256 (RFC 2104) of a side under its own 32-byte salt, lower-case hexadecimal. */
export const sideDigest = (text: string, salt: Uint8Array): string =>
  bytesToHex(hmac(sha256, salt, utf8ToBytes(text)))

/** An entry with everything but its own hash. */
export type Unhashed = { [K in Kind]: Omit<EntryOfKind<K>, 'hash'> }[Kind]

/** The hash of one entry: over everything it says, the hash of the entry before included. */
export const hashEntry = (entry: Unhashed): string => digestOf(entry)

export type ChainVerdict =
  | { readonly whole: true }
  | { readonly whole: false; readonly brokenAtSeq: number; readonly words: string }

/** Walks a whole order's chain; a changed byte anywhere is named at the entry where it stands. */
export const verifyChain = (entries: readonly Entry[]): ChainVerdict => {
  let previousHash = noHash
  for (const [index, entry] of entries.entries()) {
    const { hash, ...rest } = entry
    const seq = index + 1
    if (entry.seq !== seq) return broken(seq, `entry ${seq} is missing or out of place`)
    if (entry.previousHash !== previousHash)
      return broken(seq, `entry ${seq} does not follow the entry before it`)
    if (hashEntry(rest) !== hash) return broken(seq, `entry ${seq} was changed after it was written`)
    previousHash = hash
  }
  return { whole: true }
}

const broken = (brokenAtSeq: number, words: string): ChainVerdict => ({ whole: false, brokenAtSeq, words })
