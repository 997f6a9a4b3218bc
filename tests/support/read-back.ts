import { openPool } from '@bayledger/db/pool'
import type { Entry } from '@bayledger/ledger/entry'
import { verifyChain } from '@bayledger/ledger/hash-chain'
import { listEntriesAfter } from '../../apps/api/src/features/entries/store/read-ledger.ts'

export type ReadBack = { readonly entries: readonly Entry[]; readonly broken: readonly string[] }

/** Every order of a shop as a process reads it that has never seen it: connections of its own, and no memory. */
export const readBack = async (url: string, shopId: string): Promise<ReadBack> => {
  const pool = openPool({ url, size: 1, onIdleError: () => undefined })
  try {
    const { rows } = await pool.query<{ order_id: string; number: string }>(
      'select order_id, number from order_heads where shop_id = $1 order by number',
      [shopId],
    )
    const entries: Entry[] = []
    const broken: string[] = []
    for (const { order_id, number } of rows) {
      const chain = await listEntriesAfter(pool, shopId, order_id, 0)
      const verdict = verifyChain(chain)
      if (!verdict.whole) broken.push(`${number}: entry ${verdict.brokenAtSeq} ${verdict.fault}`)
      entries.push(...chain)
    }
    return { entries, broken }
  } finally {
    await pool.end()
  }
}
