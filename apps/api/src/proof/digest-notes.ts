import type { Pool, PoolClient } from 'pg'
import type { DigestFile, MovedOrder } from './digest.ts'

/** What the database remembers of a digest, so that a file that is taken away is missed. */
export type DigestNote = { readonly number: number; readonly hash: string }

type Reader = Pick<Pool | PoolClient, 'query'>

export const listDigestNotes = async (reader: Reader, shopId: string): Promise<DigestNote[]> => {
  const { rows } = (await reader.query(
    'select number, hash from digests where shop_id = $1 order by number',
    [shopId],
  )) as { rows: DigestNote[] }
  return rows
}

export const noteDigest = async (
  reader: Reader,
  { shopId, number, hash, day, madeAt }: DigestFile,
): Promise<void> => {
  await reader.query(
    'insert into digests (shop_id, number, hash, day, made_at) values ($1, $2, $3, $4, $5)',
    [shopId, number, hash, day, madeAt],
  )
}

/** The newest entry of every order of a shop, from the entries themselves: no projection is believed. */
export const listNewestEntries = async (reader: Reader, shopId: string): Promise<MovedOrder[]> => {
  const { rows } = (await reader.query(
    `select distinct on (order_id) order_id as "orderId", seq, hash from entries
     where shop_id = $1 order by order_id, seq desc`,
    [shopId],
  )) as { rows: MovedOrder[] }
  return rows
}

/** Held until the transaction ends: one process writes a shop's digests at a time. */
export const lockDigests = async (reader: Reader, shopId: string): Promise<void> => {
  await reader.query("select pg_advisory_xact_lock(hashtextextended('bayledger digests ' || $1, 0))", [
    shopId,
  ])
}

/** Every shop, with the zone by which its days are counted: that of its first place. */
export const listShopZones = async (
  reader: Reader,
): Promise<{ shopId: string; name: string; timeZone: string }[]> => {
  const { rows } = (await reader.query(
    `select s.id as "shopId", s.name, coalesce(
       (select l.time_zone from locations l where l.shop_id = s.id order by l.name, l.id limit 1), 'UTC') as "timeZone"
     from shops s order by s.created_at, s.id`,
  )) as { rows: { shopId: string; name: string; timeZone: string }[] }
  return rows
}

/** Shops that entries name and that the list of shops does not: its row was removed by hand. */
export const listUnlistedShops = async (reader: Reader): Promise<string[]> => {
  const { rows } = (await reader.query(
    `select distinct shop_id as "shopId" from entries e
     where not exists (select from shops s where s.id = e.shop_id) order by 1`,
  )) as { rows: { shopId: string }[] }
  return rows.map(({ shopId }) => shopId)
}
