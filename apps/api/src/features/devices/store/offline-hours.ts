import { inTransaction } from '@bayledger/db/transaction'
import type { Pool } from 'pg'

/**
 * Sets for how many hours the tablets of a shop open what they keep without the server. Gives the names of the shops that
 * were meant; it is set only where that is one.
 */
export const setOfflineHours = (pool: Pool, hours: number, shopName: string | null): Promise<string[]> =>
  inTransaction(pool, async (tx) => {
    const { rows } = await tx.query<{ id: string; name: string }>(
      'select id, name from shops where $1::text is null or name = $1 order by name, id for update',
      [shopName],
    )
    const [shop, ...others] = rows
    if (shop && others.length === 0)
      await tx.query('update shops set offline_hours = $2 where id = $1', [shop.id, hours])
    return rows.map(({ name }) => name)
  })
