import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readIdentities } from '@bayledger/db/backup/backup-key'
import { countRows } from '@bayledger/db/backup/count-record'
import { loadTables, makeTablesOf } from '@bayledger/db/backup/load-tables'
import { readAbout, readBackup } from '@bayledger/db/backup/read-backup'
import { unpackInto } from '@bayledger/db/backup/unpack-into'
import { migrate } from '@bayledger/db/migrations/migrate'
import { readMigrations } from '@bayledger/db/migrations/migration-files'
import { openPool } from '@bayledger/db/pool'
import { bringUpToDate } from '@bayledger/db/shop-database'
import { withClient } from '@bayledger/db/with-client'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { faultLine } from '../../apps/api/src/proof/finding.ts'
import { verifyDatabase } from '../../apps/api/src/proof/verify-database.ts'
import { rebuildAfterUpgrade } from '../../apps/api/src/rebuild-after-upgrade.ts'
import { createTestDatabase, type TestDatabase } from '../support/database.ts'

/**
 * The demo shop as the program of 2026-11-29, 02:12 made it with its ten migrations of then: a backup of tables that was
 * taken of it. Every later migration meets its rows.
 */
const backup = join(import.meta.dirname, 'upgrades/after-heads-in-place.age')
const identities = readIdentities(join(import.meta.dirname, 'upgrades/key.txt'))
const migrations = readMigrations()

let database: TestDatabase
let folder: string
beforeAll(async () => {
  database = await createTestDatabase('empty')
  folder = mkdtempSync(join(tmpdir(), 'bayledger-upgrade-'))
})
afterAll(async () => {
  await database.drop()
  rmSync(folder, { recursive: true, force: true })
})

describe('a shop of an earlier version', () => {
  it('comes through every later migration with all that it holds, each applied once by two servers that start at once', async () => {
    const about = await readAbout(backup, identities)
    await makeTablesOf(database.url, about)
    const { manifest } = await withClient(database.url, (client) =>
      loadTables(client, (load) =>
        readBackup(backup, identities, (entry) =>
          entry.path.startsWith('tables/') ? load(entry) : unpackInto(folder, entry),
        ),
      ),
    )
    const first = about.migrations.length
    expect(first).toBe(10)
    for (const [at, { name }] of migrations.entries()) {
      if (at < first) continue
      const upTo = { migrations: migrations.slice(0, at + 1) }
      const done = await Promise.all([migrate(database.url, upTo), migrate(database.url, upTo)])
      expect(done.toSorted((one, other) => one.length - other.length)).toEqual([[], [name]])
    }

    expect(await bringUpToDate({ serviceUrl: database.serviceUrl, ownerUrl: database.url })).toEqual([])
    expect(await rebuildAfterUpgrade(database.url, ['the last'])).toBe(12)
    const pool = openPool({ url: database.serviceUrl, size: 1, onIdleError: () => undefined })
    const places = { dataFolder: folder, digestFolder: join(folder, 'digests') }
    const { faults, ...sums } = await verifyDatabase(pool, places, () => undefined).finally(() => pool.end())
    expect(faults.map(faultLine)).toEqual([])
    expect(sums).toMatchObject({ orders: 12, entries: 332, reports: 3, days: 1 })
    const record = ['entries', 'personal_texts', 'contact_sides', 'money_sides', 'blobs', 'sealed_reports']
    const counts = await withClient(database.url, (client) => countRows(client, record))
    for (const table of record) expect([table, counts[table]]).toEqual([table, manifest.counts[table]])
  })

  it('is refused by a program of then, once it was upgraded', async () => {
    await expect(migrate(database.url, { migrations: migrations.slice(0, 10) })).rejects.toThrow(
      /which this Bayledger does not know: it was made by a newer one/,
    )
  })
})
