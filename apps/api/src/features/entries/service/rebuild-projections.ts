import { verifyChain } from '@bayledger/ledger/hash-chain'
import type { Deps } from '../../../deps.ts'
import { projectHead } from '../store/projections/head.ts'
import { listOrderIds, replaceProjection } from '../store/rebuild-projections.ts'
import { loadLedger } from './load-ledger.ts'

/**
 * Makes heads, seen sensors and reports anew from the entries alone, order by order; refuses an order whose chain does
 * not verify. Stock and wrench cycles are counted with entries and are not touched. Gives how many orders it did.
 */
export const rebuildProjections = async (deps: Pick<Deps, 'pool' | 'shopId'>): Promise<number> => {
  const { pool, shopId } = deps
  const orderIds = await listOrderIds(pool, shopId)
  for (const orderId of orderIds) {
    const { entries, state } = await loadLedger(deps, orderId)
    const chain = verifyChain(entries)
    if (!chain.whole)
      throw new Error(
        `Order ${state.opened?.orderNumber ?? orderId}: ${chain.words}. Nothing of it was changed.`,
      )
    const last = entries.at(-1)
    if (!last) continue
    const byId = new Map(entries.map((entry) => [entry.id, entry]))
    const write = {
      shopId,
      orderId,
      after: 0,
      entries,
      head: projectHead(state, last.receivedAt),
      entryById: (id: string) => byId.get(id),
      sides: [],
    }
    await replaceProjection(pool, write, last)
  }
  return orderIds.length
}
