import { digestOf } from './digests.ts'
import type { Entry, EntryOfKind } from './entry.ts'
import { noHash } from './entry.ts'
import type { Kind } from './registry.ts'

/** An entry with everything but its own hash. */
export type Unhashed = { [K in Kind]: Omit<EntryOfKind<K>, 'hash'> }[Kind]

/** The hash of one entry, taken over everything it says and the hash of the entry before. */
export const hashEntry = (entry: Unhashed): string => digestOf(entry)

/** `missing`: or out of place. `unlinked`: it does not follow the entry before it. `changed`: after it was written. */
export type ChainFault = 'missing' | 'unlinked' | 'changed'

export type ChainVerdict =
  | { readonly whole: true }
  | { readonly whole: false; readonly brokenAtSeq: number; readonly fault: ChainFault }

/** Checks a whole order's chain and names the first entry that does not hold. */
export const verifyChain = (entries: readonly Entry[]): ChainVerdict => {
  let previousHash = noHash
  for (const [index, entry] of entries.entries()) {
    const { hash, ...rest } = entry
    const seq = index + 1
    if (entry.seq !== seq) return broken(seq, 'missing')
    if (entry.previousHash !== previousHash) return broken(seq, 'unlinked')
    if (hashEntry(rest) !== hash) return broken(seq, 'changed')
    previousHash = hash
  }
  return { whole: true }
}

const broken = (brokenAtSeq: number, fault: ChainFault): ChainVerdict => ({
  whole: false,
  brokenAtSeq,
  fault,
})
