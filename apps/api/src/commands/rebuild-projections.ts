import { openPool } from '@bayledger/db/pool'
import { ConfigProblem } from '../config.ts'
import { rebuildProjections } from '../features/entries/service/rebuild-projections.ts'
import { onShop } from './on-shop.ts'

/**
 * `npm run projections:rebuild`: rebuilds everything that entries can rebuild, as the database's owner. Safe
 * while the service runs.
 */
await onShop(async ({ database }) => {
  if (database.ownerUrl === null)
    throw new ConfigProblem(
      'A rebuild writes as the owner of the database. Set DATABASE_OWNER_URL for this run.',
    )
  const pool = openPool({ url: database.ownerUrl, onIdleError: () => undefined })
  try {
    const { rows } = await pool.query<{ id: string; name: string }>(
      'select id, name from shops order by created_at',
    )
    for (const { id, name } of rows)
      console.log(
        `${name}: ${await rebuildProjections({ pool, shopId: id })} orders rebuilt from their entries.`,
      )
  } finally {
    await pool.end()
  }
})
