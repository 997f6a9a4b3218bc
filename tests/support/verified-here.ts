import { openPool } from '@bayledger/db/pool'
import { faultLine } from '../../apps/api/src/proof/finding.ts'
import { type Verification, verifyDatabase } from '../../apps/api/src/proof/verify-database.ts'
import { writeDigest } from '../../apps/api/src/proof/write-digest.ts'
import type { TestApp } from './app.ts'

/** What verifying finds in a shop, with its digests. */
export const verifiedHere = async (shop: TestApp): Promise<Verification> => {
  const pool = openPool({ url: shop.url, size: 1, onIdleError: () => undefined })
  return verifyDatabase(pool, shop.parts.digestPlaces, () => undefined).finally(() => pool.end())
}

/** Everything that it finds wrong there. */
export const faultsHere = async (shop: TestApp): Promise<string[]> =>
  (await verifiedHere(shop)).faults.map(faultLine)

/** Closes a day of the shop with its digest. */
export const closeDayHere = (shop: TestApp, day: string) =>
  writeDigest(shop.parts.pool, shop.parts.digestPlaces, {
    ...{ shopId: shop.demo.shop.id, day, at: shop.clock.now().toISOString() },
  })
