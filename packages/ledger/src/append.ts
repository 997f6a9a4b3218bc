import type { Refusal } from './admit/refusal.ts'
import type { Draft, Entry, Given } from './entry.ts'
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
