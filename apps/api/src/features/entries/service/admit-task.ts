import { admitHeard, heardOf } from '@bayledger/ledger/admit/admit-heard'
import { type Refusal, refuse } from '@bayledger/ledger/admit/refusal'
import { chainEntry } from '@bayledger/ledger/append'
import { canonicalText } from '@bayledger/ledger/digests'
import { type Draft, type Entry, noHash } from '@bayledger/ledger/entry'
import type { ShopFacts } from '../store/read-shop-facts.ts'
import type { Opening } from '../store/write-entries.ts'
import { factsFor } from './admit-facts.ts'
import type { Task } from './append-task.ts'
import { continued, entriesOf, type KeptOrder, seqOf, stateOfKept } from './kept-orders.ts'
import { planAfterDecision } from './plan-after-decision.ts'

export type Admission =
  | {
      readonly does: 'write'
      readonly order: KeptOrder
      /** The entry of the draft itself. */
      readonly entry: Entry
      /** It, and what the server writes with it. */
      readonly written: readonly Entry[]
    }
  | { readonly does: 'refuse'; readonly refusal: Refusal }
  /** What the task was prepared with is no longer true of the order. */
  | { readonly does: 'prepare-again' }

/**
 * Admits a task against an order in memory, together with what the server writes with it: the plan after a decision is
 * written with the decision or not at all. Pure but for the clock.
 */
export const admitTask = (task: Task, before: KeptOrder, shop: ShopFacts): Admission => {
  const { own, draft } = task
  if (before.doubt) return { does: 'prepare-again' }
  if (own.ofSeq !== null && own.ofSeq !== seqOf(before)) return { does: 'prepare-again' }
  const at = laterOf(task.deps.clock.now().toISOString(), before.last?.receivedAt)
  const written: Entry[] = []
  let order = before
  const pending: Draft[] = [draft]
  for (let next = pending.shift(); next; next = pending.shift()) {
    const state = stateOfKept(order)
    const facts = factsFor(shop, own, state, next, at)
    const verdict = admitHeard(
      state,
      next,
      facts,
      next === draft && task.heard ? heardOf(entriesOf(order), draft, task.heard) : null,
    )
    if (!verdict.admitted) return { does: 'refuse', refusal: verdict }
    const given = next === draft ? { ...task.given, ...openingGiven(task.opening) } : {}
    const entry = chainEntry(
      next,
      { seq: seqOf(order), hash: order.last?.hash ?? noHash },
      { at, given: verdict.holds.length > 0 ? { ...given, holds: [...verdict.holds] } : given },
    )
    order = continued(order, entry)
    written.push(entry)
    const plan = task.plansAfterDecision ? planAfterDecision(stateOfKept(order), next, at) : null
    if (plan) pending.push(plan)
  }
  const [entry] = written
  if (!entry) throw new RangeError('a draft was admitted and made no entry')
  return { does: 'write', order, entry, written }
}

const openingGiven = (opening: Opening | null) => (opening ? { orderNumber: opening.number } : {})

/** An order's times of receipt never run backwards, whatever the server's clock does. */
const laterOf = (now: string, last: string | undefined): string =>
  last !== undefined && last > now ? last : now

/** Who delivers it, and through which tablet, may differ from one try to the next; what was written may not. */
export const isSameContent = (entry: Entry, draft: Draft): boolean =>
  canonicalText(contentOf(entry)) === canonicalText(contentOf(draft))

const contentOf = ({ kind, version, payload, writtenAt, restsOn }: Entry | Draft) => ({
  kind,
  version,
  payload,
  writtenAt,
  restsOn,
})

export const idReused = refuse('ENTRY_ID_REUSED', {})
