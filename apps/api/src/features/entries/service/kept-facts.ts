import type { Pool } from 'pg'
import { readShopFacts, type ShopFacts } from '../store/read-shop-facts.ts'

export type KeptFacts = {
  /** The facts as this process knows them, perhaps behind the database; undefined before they were first read. */
  readonly peek: (shopId: string) => ShopFacts | undefined
  /** The facts as the database has them now. */
  readonly refresh: (shopId: string) => Promise<ShopFacts>
}

/** Each shop's facts in memory. Who appends on them names their version, and the database says whether it is still it. */
export const keepFacts = (pool: Pool): KeptFacts => {
  const kept = new Map<string, ShopFacts>()
  return {
    peek: (shopId) => kept.get(shopId),
    refresh: async (shopId) => {
      const read = await readShopFacts(pool, shopId)
      const newest = kept.get(shopId)
      // Two readings may come back in the other order.
      if (newest && newest.version > read.version) return newest
      kept.set(shopId, read)
      return read
    },
  }
}
