import { openPool } from '@bayledger/db/pool'
import { rebuildProjections } from './features/entries/service/rebuild-projections.ts'

/** An order that cannot be relied on stays as it is and is read-only; it keeps no other from being served. */
const passOver = () => undefined

/**
 * After migrations, rebuilds what entries make: a column that a migration added is filled by the program, not by SQL.
 * `ownerUrl` is the owner's; without migrations nothing is done. Gives the number of orders.
 */
export const rebuildAfterUpgrade = async (
  ownerUrl: string | null,
  migrations: readonly string[],
): Promise<number> => {
  if (ownerUrl === null || migrations.length === 0) return 0
  const pool = openPool({ url: ownerUrl, size: 2, onIdleError: () => undefined })
  try {
    const { rows } = await pool.query<{ id: string }>('select id from shops order by created_at')
    let orders = 0
    for (const { id } of rows) orders += await rebuildProjections({ pool, shopId: id }, passOver)
    return orders
  } finally {
    await pool.end()
  }
}
