import { type Entry, noHash } from './entry.ts'
import { hashEntry } from './hash-chain.ts'
import { isKind, versionOf } from './registry.ts'

/** Why an order cannot be relied on, and at which entry that shows. */
export type Doubt = {
  readonly code: 'chain-broken' | 'newer-than-this-program'
  readonly seq: number
}

/**
 * Of entries that were just read, those that follow soundly on the ones before: numbered without a gap, chained, hashed
 * as written, and of a kind and version that this program knows. The first that is not raises a doubt; it and all after
 * it are left out.
 */
export const soundAfter = (
  last: Pick<Entry, 'seq' | 'hash'> | null,
  entries: readonly Entry[],
): { readonly sound: readonly Entry[]; readonly doubt: Doubt | null } => {
  let before = { seq: last?.seq ?? 0, hash: last?.hash ?? noHash }
  for (const [index, entry] of entries.entries()) {
    const code = doubtOf(before, entry)
    if (code !== null) return { sound: entries.slice(0, index), doubt: { code, seq: before.seq + 1 } }
    before = entry
  }
  return { sound: entries, doubt: null }
}

const doubtOf = (
  before: { readonly seq: number; readonly hash: string },
  entry: Entry,
): Doubt['code'] | null => {
  const { hash, ...rest } = entry
  if (entry.seq !== before.seq + 1 || entry.previousHash !== before.hash || hashEntry(rest) !== hash)
    return 'chain-broken'
  const kind: string = entry.kind
  return isKind(kind) && entry.version <= versionOf(kind) ? null : 'newer-than-this-program'
}
