import type { Pool, PoolClient } from 'pg'

/** Bytes under their own digest, lower-case hex. */
export type Blob = {
  readonly sha256: string
  readonly mediaType: string
  readonly bytes: Uint8Array
  readonly at: Date
}

/** Stores bytes under their digest; storing the same bytes again changes nothing. */
export const storeBlob = async (db: Pool | PoolClient, shopId: string, blob: Blob): Promise<void> => {
  await db.query({
    name: 'store-blob',
    text: `insert into blobs (shop_id, sha256, media_type, bytes, created_at) values ($1, $2, $3, $4, $5)
      on conflict do nothing`,
    values: [shopId, blob.sha256, blob.mediaType, Buffer.from(blob.bytes), blob.at],
  })
}

/** The bytes with this digest; `null` where there are none. */
export const findBlobBytes = async (
  db: Pool | PoolClient,
  shopId: string,
  sha256: string,
): Promise<Uint8Array | null> => {
  const { rows } = await db.query<{ bytes: Buffer }>({
    name: 'blob-bytes',
    text: 'select bytes from blobs where shop_id = $1 and sha256 = $2',
    values: [shopId, sha256],
  })
  return rows[0]?.bytes ?? null
}
