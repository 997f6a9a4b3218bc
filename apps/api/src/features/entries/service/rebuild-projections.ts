import { verifyChain } from '@bayledger/ledger/hash-chain'
import type { Deps } from '../../../deps.ts'
import { listOrderIds, replaceProjection } from '../store/rebuild-projections.ts'
import { loadLedger } from './load-ledger.ts'
import { projectHead, projectRows } from './project-entries.ts'

/**
 * Makes heads, seen sensors and reports anew from the entries alone, order by order; refuses an order whose chain does
 * not verify. Stock and wrench cycles are counted with entries and are not touched. Gives how many orders it did.
 */
export const rebuildProjections = async (deps: Pick<Deps, 'pool' | 'shopId'>): Promise<number> => {
  const orderIds = await listOrderIds(deps.pool, deps.shopId)
  for (const orderId of orderIds) {
    const { entries, state } = await loadLedger(deps, orderId)
    const chain = verifyChain(entries)
    if (!chain.whole)
      throw new Error(
        `Order ${state.opened?.orderNumber ?? orderId}: ${chain.words}. Nothing of it was changed.`,
      )
    const last = entries.at(-1)
    if (!last) continue
    await replaceProjection(deps.pool, deps.shopId, orderId, {
      head: projectHead(state, last.receivedAt),
      rows: projectRows(entries, entries),
      at: last.receivedAt,
      seq: last.seq,
      hash: last.hash,
    })
  }
  return orderIds.length
}
