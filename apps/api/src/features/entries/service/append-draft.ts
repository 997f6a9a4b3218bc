import { admit } from '@bayledger/ledger/admit'
import { type DeliveryRefusal, type Refusal, refuse } from '@bayledger/ledger/admit/refusal'
import { chainEntry, stateOf } from '@bayledger/ledger/append'
import { type Draft, type Entry, type Given, noHash } from '@bayledger/ledger/entry'
import { canonicalText } from '@bayledger/ledger/hash-chain'
import { constraintNamed } from '../../../core/constraint-named.ts'
import type { Deps } from '../../../deps.ts'
import { peekOrderNumber } from '../store/read-facts.ts'
import { findEntryById } from '../store/read-ledger.ts'
import { type SideToKeep, writeEntries } from '../store/write-entries.ts'
import { loadFacts } from './load-facts.ts'
import { loadLedger, remember } from './load-ledger.ts'
import { planAfterDecision } from './plan-after-decision.ts'
import { projectHead, projectRows } from './project-entries.ts'

export type Appended =
  | { readonly admitted: true; readonly known: boolean; readonly entry: Entry }
  | Refusal
  | DeliveryRefusal

export type AppendOptions = {
  readonly sides: readonly SideToKeep[]
  readonly given?: Omit<Given, 'holds'>
  /** Off where the plan comes as an entry of its own, as in a ledger that is loaded whole. */
  readonly plansAfterDecision?: boolean
}

/** More writers than this at one order at one moment would be a fault of ours, not a busy day. */
const mostTries = 60

/**
 * Appends one entry: reads the head, folds, admits, and writes only if the head is still that one; otherwise it
 * reads again. What the server writes with it (the plan after a decision) stands or falls with it.
 */
export const appendDraft = async (deps: Deps, draft: Draft, options: AppendOptions): Promise<Appended> => {
  for (let attempt = 0; attempt < mostTries; attempt += 1) {
    const done = await attemptAppend(deps, draft, options)
    if (done !== 'head moved') {
      if (done.admitted && !done.known) deps.live.wrote()
      return done
    }
    const elsewhere = await findEntryById(deps.pool, deps.shopId, draft.id)
    if (elsewhere && elsewhere.orderId !== draft.orderId) return idReused
  }
  throw new Error(`the head of order ${draft.orderId} moved ${mostTries} times in a row`)
}

const attemptAppend = async (
  deps: Deps,
  draft: Draft,
  { sides, given = {}, plansAfterDecision = true }: AppendOptions,
): Promise<Appended | 'head moved'> => {
  const ledger = await loadLedger(deps, draft.orderId)
  const known = ledger.entries.find(({ id }) => id === draft.id)
  if (known) return isSameContent(known, draft) ? { admitted: true, known: true, entry: known } : idReused
  const factsFor = await loadFacts(deps, ledger.state, [draft])
  const at = deps.clock.now().toISOString()
  const opening = draft.kind === 'order.opened' ? await openingNumber(deps, given) : null
  const entries: Entry[] = [...ledger.entries]
  let state = ledger.state
  const pending: Draft[] = [draft]
  for (let next = pending.shift(); next; next = pending.shift()) {
    const verdict = admit(state, next, factsFor(next, at))
    if (!verdict.admitted) return verdict
    const gives = next === draft ? { ...given, ...(opening ? { orderNumber: opening.number } : {}) } : {}
    const last = entries.at(-1)
    const entry = chainEntry(
      next,
      { seq: last?.seq ?? 0, hash: last?.hash ?? noHash },
      { at, given: verdict.holds.length > 0 ? { ...gives, holds: [...verdict.holds] } : gives },
    )
    entries.push(entry)
    state = stateOf(entries, deps.shopId, draft.orderId)
    const plan = plansAfterDecision ? planAfterDecision(state, next, at) : null
    if (plan) pending.push(plan)
  }
  const written = entries.slice(ledger.entries.length)
  const isWritten = await writeEntries(deps.pool, {
    shopId: deps.shopId,
    orderId: draft.orderId,
    after: ledger.entries.length,
    entries: written,
    head: projectHead(state, at),
    rows: projectRows(written, ledger.entries),
    sides,
    opening,
  }).catch(refusalOrThrow)
  if (typeof isWritten !== 'boolean') return isWritten
  const [entry] = written
  if (!isWritten || !entry) return 'head moved'
  remember(deps, draft.orderId, { entries, state })
  return { admitted: true, known: false, entry }
}

/** Who delivers it, and through which tablet, may differ from one try to the next; what was written may not. */
const isSameContent = (entry: Entry, draft: Draft): boolean =>
  canonicalText(contentOf(entry)) === canonicalText(contentOf(draft))

const contentOf = ({ kind, version, payload, writtenAt, restsOn }: Entry | Draft) => ({
  kind,
  version,
  payload,
  writtenAt,
  restsOn,
})

const idReused = refuse('ENTRY_ID_REUSED', {})

const openingNumber = async (deps: Deps, given: Omit<Given, 'holds'>) => {
  if (given.orderNumber !== undefined) return { number: given.orderNumber, takes: null }
  const takes = await peekOrderNumber(deps.pool, deps.shopId)
  return { number: `${takes.series}-${takes.next}`, takes }
}

/** Foreign keys say what no pure function can: whether the customer, vehicle or place of a new order exists. */
const refusalOrThrow = (error: unknown): DeliveryRefusal | false => {
  const constraint = constraintNamed(error)
  // Another copy of the same entry was faster by a hair: reading again finds it.
  if (constraint === 'entries__id' || constraint === 'entries__pk' || constraint === 'order_heads__pk')
    return false
  const missing = constraint === null ? undefined : missingParts[constraint]
  if (missing === undefined) throw error
  return refuse('ORDER_PARTS_UNKNOWN', { part: missing })
}

const missingParts: Readonly<Record<string, 'customer' | 'vehicle' | 'location'>> = {
  order_heads__customer: 'customer',
  order_heads__vehicle: 'vehicle',
  order_heads__location: 'location',
}
