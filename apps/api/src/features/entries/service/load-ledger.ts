import { stateOf } from '@bayledger/ledger/append'
import type { Entry } from '@bayledger/ledger/entry'
import type { OrderState } from '@bayledger/ledger/state'
import type { Deps } from '../../../deps.ts'
import { listEntriesAfter } from '../store/read-ledger.ts'

export type Ledger = { readonly entries: readonly Entry[]; readonly state: OrderState }

/** How many orders are kept folded in memory; a shop's open orders and those it looked at last. */
const keptOrders = 300

const kept = new WeakMap<object, Map<string, Ledger>>()

/**
 * An order's entries and what they fold to, as of now: what was folded before is kept by order, and only what was
 * written since is read. Several processes may append; the database says what is newest.
 */
export const loadLedger = async (deps: Pick<Deps, 'pool' | 'shopId'>, orderId: string): Promise<Ledger> => {
  const ledgers = ledgersOf(deps)
  const known = ledgers.get(keyOf(deps, orderId))
  const newer = await listEntriesAfter(deps.pool, deps.shopId, orderId, known?.entries.length ?? 0)
  if (known && newer.length === 0) return remember(deps, orderId, known)
  const entries = [...(known?.entries ?? []), ...newer]
  return remember(deps, orderId, { entries, state: stateOf(entries, deps.shopId, orderId) })
}

/** Keeps what an append has just made, and forgets the order that was not looked at for longest. */
export const remember = (deps: Pick<Deps, 'pool' | 'shopId'>, orderId: string, ledger: Ledger): Ledger => {
  const ledgers = ledgersOf(deps)
  ledgers.delete(keyOf(deps, orderId))
  if (ledger.entries.length > 0) ledgers.set(keyOf(deps, orderId), ledger)
  const [oldest] = ledgers.keys()
  if (ledgers.size > keptOrders && oldest !== undefined) ledgers.delete(oldest)
  return ledger
}

/** An order is known by its shop and its id, so that another shop's id finds nothing here. */
const keyOf = ({ shopId }: Pick<Deps, 'shopId'>, orderId: string): string => `${shopId}/${orderId}`

const ledgersOf = (deps: Pick<Deps, 'pool'>): Map<string, Ledger> => {
  const known = kept.get(deps.pool)
  if (known) return known
  const made = new Map<string, Ledger>()
  kept.set(deps.pool, made)
  return made
}
