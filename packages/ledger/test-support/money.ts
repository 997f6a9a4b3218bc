import { hexToBytes } from '@noble/hashes/utils.js'
import { canonicalText, sha256Hex, sideDigest } from '../src/digests.ts'
import type { MoneySides } from '../src/questions/money.ts'

const kept = new Map<string, string>()

/** Every money side that was made here: what a server finds for the digests of an entry. */
export const keptMoney: MoneySides = kept

/** Puts money into a side and gives its digest; the same money always gets the same side. */
export const seal = (content: object): string => {
  const text = canonicalText(content)
  const digest = sideDigest(text, hexToBytes(sha256Hex(`ledger-test/salt/${text}`)))
  kept.set(digest, text)
  return digest
}
