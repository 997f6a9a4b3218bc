import { openPool } from '@bayledger/db/pool'
import { openShopDatabase } from '@bayledger/db/shop-database'
import { readConfig } from '../config.ts'
import { rebuildProjections } from '../features/entries/service/rebuild-projections.ts'

/**
 * `npm run projections:rebuild`: rebuilds everything that entries can rebuild, as the database's owner. Safe
 * while the service runs.
 */
const database = await openShopDatabase(readConfig(), (line) => console.log(line), 'join')
if (database.ownerUrl === null) {
  console.error('A rebuild writes as the owner of the database. Set DATABASE_OWNER_URL for this run.')
  process.exit(2)
}
const pool = openPool({ url: database.ownerUrl, onIdleError: () => undefined })
const { rows } = await pool.query<{ id: string; name: string }>(
  'select id, name from shops order by created_at',
)
for (const { id, name } of rows)
  console.log(`${name}: ${await rebuildProjections({ pool, shopId: id })} orders rebuilt from their entries.`)
await pool.end()
await database.stop()
