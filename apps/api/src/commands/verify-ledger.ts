import { openPool } from '@bayledger/db/pool'
import { listPendingMigrations } from '@bayledger/db/shop-database'
import { type Config, ConfigProblem } from '../config.ts'
import { faultLine } from '../proof/finding.ts'
import { type Verification, verifyDatabase } from '../proof/verify-database.ts'
import { stampLines } from '../proof/verify-stamp.ts'
import type { DigestPlaces } from '../proof/write-digest.ts'
import { onShop } from './on-shop.ts'

/**
 * `npm run -s ledger:verify`: walks every chain, head, projection, side, sealed file, photo, daily digest and note of an erasure, and
 * names what does not hold. Safe while the service runs; starts the shop's own PostgreSQL where none runs. Status 1 where anything
 * is broken, 2 where it could not look.
 */
const mostNamed = 20

const verifiedAt = async (
  serviceUrl: string,
  places: DigestPlaces & Pick<Config, 'stampRoots'>,
): Promise<Verification> => {
  // Verifying changes nothing, so it does not migrate either.
  const pending = await listPendingMigrations(serviceUrl)
  if (pending.length > 0)
    throw new ConfigProblem(
      'The database was made by an older version than this program. Start the service once, or run npm run db:migrate; then verify again.',
    )
  const pool = openPool({ url: serviceUrl, size: 1, onIdleError: () => undefined })
  let told = performance.now()
  return verifyDatabase(pool, places, (done, of) => {
    if (performance.now() < told + 1_000 && done < of) return
    told = performance.now()
    console.error(`${done} of ${of} orders`)
  }).finally(() => pool.end())
}

await onShop(
  async ({ database, config }) => {
    const result = await verifiedAt(database.serviceUrl, config)
    const { orders, entries, reports, photos, awaited, stamps, days, uncovered, unerased, faults } = result
    for (const fault of faults.slice(0, mostNamed)) console.log(faultLine(fault))
    if (faults.length > mostNamed) console.log(`and ${faults.length - mostNamed} more`)
    if (photos > 0) console.log(`photos ${photos}, not received yet ${awaited}`)
    for (const line of stampLines(stamps)) console.log(line)
    if (unerased > 0)
      console.log(
        `people who are noted as erased and are in the database again: ${unerased}; start the service to erase them`,
      )
    console.log(
      uncovered === 1
        ? '1 entry is not covered by a digest yet'
        : `${uncovered} entries are not covered by a digest yet`,
    )
    console.log(
      `orders ${orders}, entries ${entries}, reports ${reports}, days ${days}, broken ${faults.length}`,
    )
    process.exitCode = faults.length === 0 ? 0 : 1
  },
  { say: (line) => console.error(line) },
)
