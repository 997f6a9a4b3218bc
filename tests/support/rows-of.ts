import { withClient } from '@bayledger/db/with-client'
import type { TestApp } from './app.ts'

/** Runs a statement as the owner of the database; gives its rows. */
export const rowsOf = async (
  shop: TestApp,
  statement: string,
  values: readonly unknown[] = [],
): Promise<Record<string, unknown>[]> =>
  withClient(shop.ownerUrl, async (owner) => (await owner.query(statement, [...values])).rows)

/** Until `work` is done, the connection that erases somebody is ended at its commit, after everything else that it does. */
export const cutOffAtCommit = <T>(shop: TestApp, work: () => Promise<T>): Promise<T> =>
  withClient(shop.adminUrl, async (admin) => {
    await admin.query(`create function cut_off() returns trigger language plpgsql security definer as $$
      begin perform pg_terminate_backend(pg_backend_pid()); return null; end $$;
      create constraint trigger cut_off after insert on erasures deferrable initially deferred
        for each row execute function cut_off()`)
    try {
      return await work()
    } finally {
      await admin.query('drop trigger cut_off on erasures; drop function cut_off')
    }
  })

/** Takes back that people were erased, as the database of a backup from before has it; their cards hold these names again. */
export const unerase = (shop: TestApp, cards: readonly Record<string, unknown>[]): Promise<void> =>
  withClient(shop.adminUrl, async (admin) => {
    await admin.query("set session_replication_role = 'replica'")
    await admin.query("delete from erasures where reason = 'asked'")
    for (const { id, name } of cards)
      await admin.query('update customers set name = $2, erased_at = null where id = $1', [id, name])
  })
