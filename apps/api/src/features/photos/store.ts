import { inTransaction } from '@bayledger/db/transaction'
import type { Pool } from 'pg'
import { storeBlob } from '../../core/blobs.ts'

/** The photo that some entry of the shop names, by its digest. */
export type NamedPhoto = {
  readonly byteLength: number
  readonly isReceived: boolean
  readonly isErased: boolean
}

export const findNamed = async (pool: Pool, shopId: string, digest: string): Promise<NamedPhoto | null> => {
  const { rows } = await pool.query<NamedPhoto>({
    name: 'named-photo',
    text: `select (payload ->> 'byteLength')::int as "byteLength",
        exists (select from received_photos r where r.shop_id = $1 and r.digest = $2) as "isReceived",
        exists (select from erasures x where x.shop_id = $1 and $2 = any (x.digests)) as "isErased"
      from entries where shop_id = $1 and kind = 'photo.attached' and payload ->> 'digest' = $2
      order by received_at limit 1`,
    values: [shopId, digest],
  })
  return rows[0] ?? null
}

export const listPieceNumbers = async (pool: Pool, shopId: string, digest: string): Promise<number[]> => {
  const { rows } = await pool.query<{ number: number }>({
    name: 'photo-piece-numbers',
    text: 'select number from photo_pieces where shop_id = $1 and digest = $2 order by number',
    values: [shopId, digest],
  })
  return rows.map(({ number }) => number)
}

/** Keeps a piece; one that is here already stays as it is. */
export const insertPiece = async (
  pool: Pool,
  shopId: string,
  piece: {
    readonly digest: string
    readonly number: number
    readonly bytes: Uint8Array
    readonly at: Date
  },
): Promise<void> => {
  await pool.query({
    name: 'insert-photo-piece',
    text: `insert into photo_pieces (shop_id, digest, number, bytes, received_at) values ($1, $2, $3, $4, $5)
      on conflict do nothing`,
    values: [shopId, piece.digest, piece.number, Buffer.from(piece.bytes), piece.at],
  })
}

export const findPiece = async (
  pool: Pool,
  shopId: string,
  digest: string,
  number: number,
): Promise<Uint8Array | null> => {
  const { rows } = await pool.query<{ bytes: Buffer }>({
    name: 'photo-piece',
    text: 'select bytes from photo_pieces where shop_id = $1 and digest = $2 and number = $3',
    values: [shopId, digest, number],
  })
  return rows[0]?.bytes ?? null
}

export const deletePieces = async (pool: Pool, shopId: string, digest: string): Promise<void> => {
  await pool.query({
    name: 'delete-photo-pieces',
    text: 'delete from photo_pieces where shop_id = $1 and digest = $2',
    values: [shopId, digest],
  })
}

export type Whole = {
  readonly digest: string
  readonly mediaType: string
  readonly bytes: Uint8Array
  readonly view: { readonly digest: string; readonly bytes: Uint8Array }
  readonly at: Date
}

/** Keeps a photo and its view copy and forgets the pieces. Doing it twice changes nothing. */
export const storeWhole = (pool: Pool, shopId: string, photo: Whole): Promise<void> =>
  inTransaction(pool, async (tx) => {
    const { digest, mediaType, bytes, view, at } = photo
    await storeBlob(tx, shopId, { sha256: digest, mediaType, bytes, at })
    await storeBlob(tx, shopId, { sha256: view.digest, mediaType: 'image/jpeg', bytes: view.bytes, at })
    await tx.query(
      `insert into received_photos (shop_id, digest, view_digest, received_at) values ($1, $2, $3, $4)
        on conflict do nothing`,
      [shopId, digest, view.digest, at],
    )
    await tx.query('delete from photo_pieces where shop_id = $1 and digest = $2', [shopId, digest])
  })

/** The view copies that are here, by the digest of their photo; none of a photo that was erased. */
export const findViewCopies = async (
  pool: Pool,
  shopId: string,
  digests: readonly string[],
): Promise<ReadonlyMap<string, Uint8Array>> => {
  if (digests.length === 0) return new Map()
  const { rows } = await pool.query<{ digest: string; bytes: Buffer }>({
    name: 'view-copies',
    text: `select r.digest, b.bytes from received_photos r
        join blobs b on b.shop_id = r.shop_id and b.sha256 = r.view_digest
      where r.shop_id = $1 and r.digest = any ($2::text[])
        and not exists (select from erasures x where x.shop_id = $1 and r.digest = any (x.digests))`,
    values: [shopId, digests],
  })
  return new Map(rows.map(({ digest, bytes }) => [digest, bytes]))
}

/** Which of these photos have arrived, and which were erased. */
export const listStates = async (
  pool: Pool,
  shopId: string,
  digests: readonly string[],
): Promise<{ received: string[]; erased: string[] }> => {
  const { rows } = await pool.query<{ digest: string; erased: boolean }>({
    name: 'photo-states',
    text: `select d as digest,
        exists (select from erasures x where x.shop_id = $1 and d = any (x.digests)) as erased
      from unnest($2::text[]) as d
      where exists (select from erasures x where x.shop_id = $1 and d = any (x.digests))
         or exists (select from received_photos r where r.shop_id = $1 and r.digest = d)`,
    values: [shopId, digests],
  })
  return {
    received: rows.filter(({ erased }) => !erased).map(({ digest }) => digest),
    erased: rows.filter(({ erased }) => erased).map(({ digest }) => digest),
  }
}
