import { withClient } from '@bayledger/db/with-client'
import type { TestApp } from './app.ts'

/** Runs a statement as the owner of the database; gives its rows. */
export const rowsOf = async (
  shop: TestApp,
  statement: string,
  values: readonly unknown[] = [],
): Promise<Record<string, unknown>[]> =>
  withClient(shop.ownerUrl, async (owner) => (await owner.query(statement, [...values])).rows)

/** Takes back that people were erased, as the database of a backup from before has it; their cards hold these names again. */
export const unerase = (shop: TestApp, cards: readonly Record<string, unknown>[]): Promise<void> =>
  withClient(shop.adminUrl, async (admin) => {
    await admin.query("set session_replication_role = 'replica'")
    await admin.query("delete from erasures where reason = 'asked'")
    for (const { id, name } of cards)
      await admin.query('update customers set name = $2, erased_at = null where id = $1', [id, name])
  })
