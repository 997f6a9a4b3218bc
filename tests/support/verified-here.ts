import { openPool } from '@bayledger/db/pool'
import { faultLine } from '../../apps/api/src/proof/finding.ts'
import { verifyDatabase } from '../../apps/api/src/proof/verify-database.ts'
import { writeDigest } from '../../apps/api/src/proof/write-digest.ts'
import type { TestApp } from './app.ts'

/** Everything that verifying finds wrong in a shop, with its digests. */
export const faultsHere = async (shop: TestApp): Promise<string[]> => {
  const pool = openPool({ url: shop.url, size: 1, onIdleError: () => undefined })
  const { faults } = await verifyDatabase(pool, shop.parts.digestPlaces, () => undefined).finally(() =>
    pool.end(),
  )
  return faults.map(faultLine)
}

/** Closes a day of the shop with its digest. */
export const closeDayHere = (shop: TestApp, day: string) =>
  writeDigest(shop.parts.pool, shop.parts.digestPlaces, {
    ...{ shopId: shop.demo.shop.id, day, at: shop.clock.now().toISOString() },
  })
