import { openClient } from '@bayledger/db/client'
import { openPool } from '@bayledger/db/pool'
import { loadShop } from '../../prisma/seeds/demo.ts'
import { demoShop } from '../../prisma/seeds/demo-shop.ts'
import { quickHash } from './quick-hash.ts'

/**
 * Loads the demo shop without its orders, as it is at 11:40 of the day `now`, into a migrated database. Its people's passwords and
 * PINs are checked quickly.
 */
export const loadShopWithoutOrders = async (serviceUrl: string, now: string): Promise<void> => {
  const pool = openPool({ url: serviceUrl, onIdleError: () => undefined })
  const prisma = openClient(pool)
  try {
    await loadShop({ demo: demoShop(now), prisma, hashPassword: quickHash })
  } finally {
    await prisma.$disconnect()
    await pool.end()
  }
}
