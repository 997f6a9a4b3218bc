import { withClient } from '@bayledger/db/with-client'
import type { TestDatabase } from './database.ts'

/** The bytes of every photo that a database has received, as its tablet sent them, oldest first. */
export const receivedPhotos = (database: TestDatabase): Promise<Uint8Array[]> =>
  withClient(database.url, async (owner) => {
    const { rows } = await owner.query<{ bytes: Buffer }>(
      `select b.bytes from received_photos r join blobs b on b.shop_id = r.shop_id and b.sha256 = r.digest
        order by r.received_at`,
    )
    return rows.map(({ bytes }) => bytes)
  })
