import type { AdmitFacts } from './admit/facts.ts'
import type { Refusal } from './admit/refusal.ts'
import { admit } from './admit.ts'
import { type Draft, type Entry, type Given, noHash } from './entry.ts'
import { fold } from './fold.ts'
import { hashEntry, type Unhashed } from './hash-chain.ts'
import { blankOrder, type OrderState } from './state.ts'

export type Appended = { readonly admitted: true; readonly entry: Entry } | Refusal

/** The state of an order, with or without entries. */
export const stateOf = (entries: readonly Entry[], shopId: string, orderId: string): OrderState =>
  entries.length === 0 ? blankOrder(shopId, orderId) : fold(entries)

/** Gives an admitted draft its number, time of receipt and hash. */
export const chainEntry = (
  draft: Draft,
  head: { readonly seq: number; readonly hash: string },
  received: { readonly at: string; readonly given: Given },
): Entry => {
  const unhashed = {
    ...draft,
    seq: head.seq + 1,
    given: received.given,
    receivedAt: received.at,
    previousHash: head.hash,
  } as Unhashed
  return { ...unhashed, hash: hashEntry(unhashed) } as Entry
}

/** Admits one draft to an order held in memory, as the server does around its database statement. */
export const append = (
  entries: readonly Entry[],
  draft: Draft,
  facts: AdmitFacts,
  given: Omit<Given, 'holds'> = {},
): Appended => {
  const verdict = admit(stateOf(entries, draft.shopId, draft.orderId), draft, facts)
  if (!verdict.admitted) return verdict
  const last = entries.at(-1)
  const head = { seq: last?.seq ?? 0, hash: last?.hash ?? noHash }
  const withHolds = verdict.holds.length > 0 ? { ...given, holds: [...verdict.holds] } : given
  return { admitted: true, entry: chainEntry(draft, head, { at: facts.now, given: withHolds }) }
}
