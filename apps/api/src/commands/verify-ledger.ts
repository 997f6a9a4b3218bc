import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { openPool } from '@bayledger/db/pool'
import { openShopDatabase } from '@bayledger/db/shop-database'
import { readConfig } from '../config.ts'
import { faultLine } from '../proof/finding.ts'
import { verifyDatabase } from '../proof/verify-database.ts'

/**
 * `npm run -s ledger:verify`: walks every chain, head, projection, side, sealed file and daily digest, and names what
 * does not hold. Safe while the service runs; starts the shop's own PostgreSQL where none runs. Status 1 where anything
 * is broken, 2 where it could not look.
 */
const mostNamed = 20

try {
  const config = readConfig()
  if (config.databaseUrl === null && !existsSync(join(config.dataFolder, 'postgres')))
    throw new Error(`There is no shop in ${config.dataFolder}. Set DATA_FOLDER or DATABASE_URL.`)
  const database = await openShopDatabase(config, (line) => console.error(line), 'join')
  const pool = openPool({ url: database.serviceUrl, size: 1, onIdleError: () => undefined })
  let told = performance.now()
  const result = await verifyDatabase(pool, config, (done, of) => {
    if (performance.now() < told + 1_000 && done < of) return
    told = performance.now()
    console.error(`${done} of ${of} orders`)
  }).finally(async () => {
    await pool.end()
    await database.stop()
  })
  const { orders, entries, reports, days, uncovered, faults } = result
  for (const fault of faults.slice(0, mostNamed)) console.log(faultLine(fault))
  if (faults.length > mostNamed) console.log(`and ${faults.length - mostNamed} more`)
  console.log(
    uncovered === 1
      ? '1 entry is not covered by a digest yet'
      : `${uncovered} entries are not covered by a digest yet`,
  )
  console.log(
    `orders ${orders}, entries ${entries}, reports ${reports}, days ${days}, broken ${faults.length}`,
  )
  process.exitCode = faults.length === 0 ? 0 : 1
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error))
  process.exitCode = 2
}
