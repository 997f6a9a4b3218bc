import type { Entry } from '@bayledger/ledger/entry'
import { fold } from '@bayledger/ledger/fold'
import type { Doubt } from '@bayledger/ledger/sound-entries'
import type { OrderState } from '@bayledger/ledger/state'
import type { Deps } from '../../../deps.ts'
import { listEntriesAfter } from '../store/read-ledger.ts'
import { entriesOf, type KeptOrder, stateOfKept } from './kept-orders.ts'
import { memoryOf } from './process-memory.ts'

export type Ledger = {
  readonly entries: readonly Entry[]
  readonly state: OrderState
  /** Where it is not `null`, these are the entries before the first that cannot be relied on. */
  readonly doubt: Doubt | null
}

/**
 * An order's entries and what they fold to, as of now: what was folded before is kept in memory, and only what was
 * written since is read. Several processes may append; the database says what is newest.
 */
export const loadLedger = async (deps: Pick<Deps, 'pool' | 'shopId'>, orderId: string): Promise<Ledger> => {
  return ledgerOf(await memoryOf(deps.pool).orders.refresh(deps.shopId, orderId))
}

/** The same, read and folded for this once: whoever goes through many orders leaves those in memory that are worked on. */
export const readLedgerOnce = async (
  deps: Pick<Deps, 'pool' | 'shopId'>,
  orderId: string,
): Promise<Pick<Ledger, 'entries' | 'state'>> => {
  const entries = await listEntriesAfter(deps.pool, deps.shopId, orderId, 0)
  return { entries, state: fold(entries) }
}

/** The same, with every entry read and hashed again: before something is sealed on it. */
export const verifyLedger = async (deps: Pick<Deps, 'pool' | 'shopId'>, orderId: string): Promise<Ledger> =>
  ledgerOf(await memoryOf(deps.pool).orders.verify(deps.shopId, orderId))

const ledgerOf = (order: KeptOrder): Ledger => ({
  entries: entriesOf(order),
  state: stateOfKept(order),
  doubt: order.doubt,
})
