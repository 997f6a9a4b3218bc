import { join } from 'node:path'
import type { OpenedShop } from '@bayledger/db/backup/restore-backup'
import { openPool } from '@bayledger/db/pool'
import { type Verification, verifyDatabase } from '../../proof/verify-database.ts'
import { rebuildAfterUpgrade } from '../../rebuild-after-upgrade.ts'

/** What was found in a restored shop; `differences` in words, one a table whose rows are not those of the backup's list. */
export type JudgedShop = {
  readonly verification: Verification
  readonly differences: readonly string[]
  readonly laterDigests: number
}

/** Verifies every chain of a restored shop and holds its rows against the list in the backup. */
export const judgeRestored = async (
  shop: OpenedShop,
  progress: (done: number, of: number) => void,
): Promise<JudgedShop> => {
  const { serviceUrl, ownerUrl, upgradedBy, dataFolder, manifest, counts, laterDigests } = shop
  await rebuildAfterUpgrade(ownerUrl, upgradedBy)
  const pool = openPool({ url: serviceUrl, size: 1, onIdleError: () => undefined })
  const places = { dataFolder, digestFolder: join(dataFolder, 'digests') }
  const verification = await verifyDatabase(pool, places, progress).finally(() => pool.end())
  const differences = Object.entries(manifest.counts)
    .filter(([table, rows]) => counts[table] !== rows)
    .map(([table, rows]) => `${table}: ${counts[table] ?? 0} rows, and the backup counted ${rows}`)
  return { verification, differences, laterDigests }
}

/** The last line of a restore: what the restored shop holds. */
export const countsLine = ({ orders, entries, reports, photos, days, faults }: Verification): string =>
  `orders ${orders}, entries ${entries}, reports ${reports}, photos ${photos}, days ${days}, broken ${faults.length}`
