import { type Entry, noHash } from './entry.ts'
import { hashEntry } from './hash-chain.ts'
import { isKind, versionOf } from './registry.ts'

/** Why an order cannot be relied on, and at which entry that shows. */
export type Doubt = {
  readonly code: 'chain-broken' | 'newer-than-this-program'
  readonly seq: number
}

/** Which entry is the newest, by its number and hash. */
type Place = Pick<Entry, 'seq' | 'hash'>

/**
 * The leading entries of a list that was just read that are sound: numbered without a gap, chained, hashed as written,
 * and of a kind and version that this program knows. The first unsound entry raises a doubt; it and all entries after it
 * are left out.
 */
export const soundAfter = (
  last: Place | null,
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

/**
 * The doubt where a head does not name the newest entry: an entry was removed from the end, added to it or rewritten
 * outside the program. The doubt begins after the last entry that both agree on. `null`: there is none.
 */
export const doubtOfHead = (head: Place | null, last: Place | null): Doubt | null => {
  if (head?.seq === last?.seq && head?.hash === last?.hash) return null
  const shorter = Math.min(head?.seq ?? 0, last?.seq ?? 0)
  return { code: 'chain-broken', seq: head?.seq === last?.seq ? shorter : shorter + 1 }
}

const doubtOf = (before: Place, entry: Entry): Doubt['code'] | null => {
  const { hash, ...rest } = entry
  if (entry.seq !== before.seq + 1 || entry.previousHash !== before.hash || hashEntry(rest) !== hash)
    return 'chain-broken'
  const kind: string = entry.kind
  return isKind(kind) && entry.version <= versionOf(kind) ? null : 'newer-than-this-program'
}
