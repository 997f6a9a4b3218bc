import { sha256Hex } from '../src/digests.ts'

/** An id shaped like a UUIDv7 (RFC 9562, 5.7), the same for the same name. */
export const idOf = (name: string): string => {
  const bits = sha256Hex(`ledger-test/${name}`)
  return `019bb1f0-${bits.slice(0, 4)}-7${bits.slice(4, 7)}-a${bits.slice(7, 10)}-${bits.slice(10, 22)}`
}

/** A digest in place of personal words: 64 hexadecimal digits that depend on the words. */
export const wordsOf = (text: string): string => sha256Hex(`ledger-test/words/${text}`)
