import type { Entry } from '@bayledger/ledger/entry'
import type { OrderState } from '@bayledger/ledger/state'
import type { Deps } from '../../../deps.ts'
import { entriesOf, stateOfKept } from './kept-orders.ts'
import { memoryOf } from './process-memory.ts'

export type Ledger = { readonly entries: readonly Entry[]; readonly state: OrderState }

/**
 * An order's entries and what they fold to, as of now: what was folded before is kept in memory, and only what was
 * written since is read. Several processes may append; the database says what is newest.
 */
export const loadLedger = async (deps: Pick<Deps, 'pool' | 'shopId'>, orderId: string): Promise<Ledger> => {
  const order = await memoryOf(deps.pool).orders.refresh(deps.shopId, orderId)
  return { entries: entriesOf(order), state: stateOfKept(order) }
}
