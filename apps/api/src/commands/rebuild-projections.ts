import { startEmbeddedPostgres } from '@bayledger/db/embedded/start'
import { openPool } from '@bayledger/db/pool'
import { readConfig } from '../config.ts'
import { rebuildProjections } from '../features/entries/service/rebuild-projections.ts'

/** `npm run projections:rebuild`: makes everything that entries can rebuild anew from them. Safe while the service runs. */
const config = readConfig()
const server =
  config.databaseUrl === null
    ? await startEmbeddedPostgres({
        dataFolder: config.dataFolder,
        progress: (line) => console.log(line),
        whenInUse: 'join',
      })
    : null
const pool = openPool({ url: config.databaseUrl ?? server?.url ?? '', onIdleError: () => undefined })
const { rows } = await pool.query<{ id: string; name: string }>(
  'select id, name from shops order by created_at',
)
for (const { id, name } of rows)
  console.log(
    `${name}: ${await rebuildProjections({ pool, shopId: id })} orders made anew from their entries.`,
  )
await pool.end()
await server?.stop()
