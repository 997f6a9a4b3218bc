import type { Pool } from 'pg'
import { judgeBy } from '../stamping/stamping.ts'
import { listDigestFiles, listDigestShops } from './digest-folder.ts'
import { readDigestKey } from './digest-key.ts'
import { listDigestNotes, listShopZones, listUnlistedShops } from './digest-notes.ts'
import { faultsOfStock, faultsOfStrayCounts } from './fault-of-projections.ts'
import type { Fault } from './finding.ts'
import { listOrderNumbers } from './read-proof.ts'
import { verifyDigests } from './verify-digests.ts'
import { verifyErasures } from './verify-erasures.ts'
import { verifyOrder } from './verify-order.ts'
import type { StampSeen } from './verify-stamp.ts'
import { type DigestPlaces, newestCovered } from './write-digest.ts'

export type Verification = {
  readonly orders: number
  readonly entries: number
  readonly reports: number
  readonly photos: number
  /** The time-stamps of reports, as far as they hold. */
  readonly stamps: readonly StampSeen[]
  /** Photos whose bytes have not arrived. */
  readonly awaited: number
  readonly days: number
  /** Entries that no digest covers yet. */
  readonly uncovered: number
  /** People whom a note outside the database names as erased and the database still holds: its next start erases them. */
  readonly unerased: number
  /** One an order and one a digest that does not hold, in the order in which they were met. */
  readonly faults: readonly Fault[]
}

/**
 * Walks everything that the shops of a database have on record. `pool` holds one connection, so that each order is read
 * in one snapshot while the service goes on writing.
 */
export const verifyDatabase = async (
  pool: Pool,
  places: DigestPlaces & { readonly stampRoots?: string | null },
  progress: (done: number, of: number) => void,
): Promise<Verification> => {
  const faults: Fault[] = []
  const stamps: StampSeen[] = []
  const judge = judgeBy(places.stampRoots ?? null)
  const sum = { orders: 0, entries: 0, reports: 0, photos: 0, awaited: 0, days: 0, uncovered: 0, unerased: 0 }
  const key = readDigestKey(places.dataFolder)
  const shops = await listShopZones(pool)
  faults.push(...(await faultsOfMissingShops(pool, places.digestFolder, shops)))
  for (const { shopId, name } of shops) {
    // Before the orders: whatever these digests cover was written before it is looked for.
    const files = listDigestFiles(places.digestFolder, shopId)
    const notes = await listDigestNotes(pool, shopId)
    const covered = newestCovered(files)
    const orders = await listOrderNumbers(pool, shopId)
    const hashes = new Map<string, readonly string[]>()
    for (const order of orders) {
      const {
        entries,
        reports,
        photos,
        awaited,
        stamps: ofOrder,
        fault,
      } = await inSnapshot(pool, () => verifyOrder(pool, shopId, order, judge))
      hashes.set(
        order.orderId,
        entries.map(({ hash }) => hash),
      )
      if (fault) faults.push(fault)
      stamps.push(...ofOrder)
      sum.orders += 1
      sum.entries += entries.length
      sum.reports += reports
      sum.photos += photos
      sum.awaited += awaited
      sum.uncovered += entries.filter(({ seq }) => seq > (covered.get(order.orderId) ?? 0)).length
      progress(sum.orders, orders.length)
    }
    sum.days += files.length
    const erasures = await verifyErasures(pool, places, { shopId, name })
    sum.unerased += erasures.waiting
    faults.push(
      ...erasures.faults,
      ...(await faultsOfStrayCounts(pool, shopId)),
      ...(await faultsOfStock(pool, shopId)),
      ...verifyDigests(name, files, notes, key, {
        hashOf: (orderId, seq) => hashes.get(orderId)?.[seq - 1],
        numberOf: (orderId) => orders.find((order) => order.orderId === orderId)?.number ?? orderId,
      }),
    )
  }
  return { ...sum, stamps, faults }
}

/** A shop that was removed whole leaves its entries or its digests behind. */
const faultsOfMissingShops = async (
  pool: Pool,
  digestFolder: string,
  shops: readonly { readonly shopId: string }[],
): Promise<Fault[]> => {
  const left = new Map([
    ...listDigestShops(digestFolder).map((shopId) => [shopId, 'there are digests of it'] as const),
    ...(await listUnlistedShops(pool)).map((shopId) => [shopId, 'there are entries of it'] as const),
  ])
  for (const { shopId } of shops) left.delete(shopId)
  return [...left].map(([shopId, what]) => ({
    where: `Shop ${shopId}`,
    what: `${what}, and the database does not list it`,
  }))
}

const inSnapshot = async <T>(pool: Pool, work: () => Promise<T>): Promise<T> => {
  await pool.query('begin isolation level repeatable read read only')
  try {
    return await work()
  } finally {
    await pool.query('commit')
  }
}
