import { openClient } from '@bayledger/db/client'
import { openPool } from '@bayledger/db/pool'
import { hashPassword } from '../../apps/api/src/features/sessions/service/hash-password.ts'
import { loadShop } from '../../prisma/seeds/demo.ts'
import { demoShop } from '../../prisma/seeds/demo-shop.ts'

/** Loads the demo shop without its orders, as it is at 11:40 of the day `now`, into a migrated database. */
export const loadShopWithoutOrders = async (serviceUrl: string, now: string): Promise<void> => {
  const pool = openPool({ url: serviceUrl, onIdleError: () => undefined })
  const prisma = openClient(pool)
  const unused = async () => {
    throw new Error('the test shop is loaded without orders')
  }
  try {
    await loadShop(demoShop(now), {
      prisma,
      now,
      hashPassword,
      appendEntries: unused,
      issueLink: unused,
      sendPhoto: unused,
      sealReport: unused,
      progress: () => undefined,
    })
  } finally {
    await prisma.$disconnect()
    await pool.end()
  }
}
