import type { Pool } from 'pg'
import { readErasureNotes } from './erasure-notes.ts'
import type { Fault } from './finding.ts'
import type { DigestPlaces } from './write-digest.ts'

export type ErasuresSeen = {
  readonly faults: readonly Fault[]
  /** People of the database whom a note outside of it names: its next start erases them. */
  readonly waiting: number
}

/**
 * Holds the erasures of a shop against their notes outside the database. An erasure without its note would come undone with the
 * next restored backup. A note without its erasure is no fault: the database was restored from before.
 */
export const verifyErasures = async (
  pool: Pool,
  places: DigestPlaces,
  { shopId, name }: { readonly shopId: string; readonly name: string },
): Promise<ErasuresSeen> => {
  // The rows first: a note is on the disk before its row is committed.
  const erased = await listNotedErasures(pool, shopId)
  const { notes, strangers } = readErasureNotes(places, shopId)
  const noted = new Map(notes.map(({ erasureId, customerId }) => [erasureId, customerId]))
  const known = new Set(erased.map(({ erasureId }) => erasureId))
  return {
    faults: [
      ...erased
        .filter(({ erasureId, customerId }) => noted.get(erasureId) !== customerId)
        .map(({ erasureId }) => ({
          where: `Erasure ${erasureId} of ${name}`,
          what: 'its note is missing from the digest folder: a restored backup would hold the person again',
        })),
      ...strangers.map((file) => ({
        where: file,
        what: 'it is no note of an erasure that this shop’s key signed, and is passed over',
      })),
    ],
    waiting: await countNotErased(
      pool,
      shopId,
      notes.filter(({ erasureId }) => !known.has(erasureId)).map(({ customerId }) => customerId),
    ),
  }
}

/** Erasures that took a card; what came late of a person is found again without a note. */
const listNotedErasures = async (
  pool: Pool,
  shopId: string,
): Promise<{ readonly erasureId: string; readonly customerId: string }[]> => {
  const { rows } = await pool.query<{ erasureId: string; customerId: string }>(
    `select id as "erasureId", customer_id as "customerId" from erasures
      where shop_id = $1 and customer_id is not null and counts ->> 'cards' <> '0' order by erased_at, id`,
    [shopId],
  )
  return rows
}

const countNotErased = async (
  pool: Pool,
  shopId: string,
  customerIds: readonly string[],
): Promise<number> => {
  if (customerIds.length === 0) return 0
  const { rows } = await pool.query<{ people: number }>(
    `select count(*)::int as people from customers
      where shop_id = $1 and id = any ($2::uuid[]) and erased_at is null`,
    [shopId, customerIds],
  )
  return rows[0]?.people ?? 0
}
