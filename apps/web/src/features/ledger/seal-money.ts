import type { SentSide } from '@bayledger/contract/entries'
import { canonicalText } from '@bayledger/ledger/digests'
import { sealSide } from './draft-entry.ts'

/** Money as a side: its canonical text under a fresh salt. */
export const moneySide = (content: object): SentSide => sealSide(canonicalText(content))

/**
 * Puts the money of an estimate into sides. Content that the order already has a side for keeps that side, so that an
 * unchanged bundle stays the same to the cent; `made` holds the new sides, which go with the entry.
 */
export const moneySealer = (
  kept: readonly { readonly digest: string; readonly text: string }[],
): { readonly seal: (content: object) => string; readonly made: () => SentSide[] } => {
  const known = new Map(kept.map(({ digest, text }) => [text, digest]))
  const made: SentSide[] = []
  return {
    seal: (content) => {
      const text = canonicalText(content)
      const before = known.get(text)
      if (before !== undefined) return before
      const side = sealSide(text)
      known.set(text, side.digest)
      made.push(side)
      return side.digest
    },
    made: () => made,
  }
}
