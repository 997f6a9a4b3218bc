import { foldAll } from '@bayledger/ledger/fold'
import { soundAfter } from '@bayledger/ledger/sound-entries'
import { doubtWords } from '@bayledger/wording/doubts'
import { english } from '@bayledger/wording/en/english'
import type { Deps } from '../../../deps.ts'
import { projectHead } from '../store/projections/head.ts'
import { listEntriesAfter } from '../store/read-ledger.ts'
import { listOrders, recountStock, replaceProjection } from '../store/rebuild-projections.ts'

const refuse = (doubt: Error): never => {
  throw doubt
}

/**
 * Rebuilds heads, seen sensors and reports from the entries alone, whatever the heads said, order by order; refuses
 * an order with an entry that cannot be relied on. Movements of stock and wrench cycles are counted with entries and
 * are not touched; what is on hand is their sum. Gives how many orders it did.
 */
export const rebuildProjections = async (
  { pool, shopId }: Pick<Deps, 'pool' | 'shopId'>,
  /** Hears of an order that cannot be relied on; it is passed over where this does not throw. */
  inDoubt: (doubt: Error) => void = refuse,
): Promise<number> => {
  const orders = await listOrders(pool, shopId)
  let rebuilt = 0
  for (const { orderId, number } of orders) {
    const entries = await listEntriesAfter(pool, shopId, orderId, 0)
    const { doubt } = soundAfter(null, entries)
    if (doubt) {
      inDoubt(new Error(`Order ${number}: ${doubtWords(english.doubts, doubt)} Nothing of it was changed.`))
      continue
    }
    const [first] = entries
    const last = entries.at(-1)
    if (!first || !last) continue
    const byId = new Map(entries.map((entry) => [entry.id, entry]))
    const write = {
      shopId,
      orderId,
      after: 0,
      entries,
      head: projectHead(foldAll(entries).state, last.receivedAt),
      entryById: (id: string) => byId.get(id),
      sides: [],
      messages: [],
    }
    await replaceProjection(pool, write, { first, last })
    rebuilt += 1
  }
  await recountStock(pool, shopId)
  return rebuilt
}
