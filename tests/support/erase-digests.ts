import { withClient } from '@bayledger/db/with-client'
import type { TestApp } from './app.ts'

/** Notes an erasure, as the owner of the database would, and deletes the files that it names. */
export const eraseDigests = (shop: TestApp, digests: readonly string[]): Promise<void> =>
  withClient(shop.adminUrl, async (admin) => {
    await admin.query(
      `insert into erasures (shop_id, id, order_id, subject, digests, reason, erased_by, erased_at)
       values ($1, gen_random_uuid(), null, 'a photo', $2, 'asked for', '{}', now())`,
      [shop.demo.shop.id, digests],
    )
    await admin.query('delete from blobs where sha256 = any ($1::text[])', [digests])
  })
