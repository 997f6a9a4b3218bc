import { join } from 'node:path'
import { countRows } from '@bayledger/db/backup/count-record'
import { readMigrations } from '@bayledger/db/migrations/migration-files'
import { openPool } from '@bayledger/db/pool'
import { bringUpToDate } from '@bayledger/db/shop-database'
import { withClient } from '@bayledger/db/with-client'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { faultLine } from '../../apps/api/src/proof/finding.ts'
import { verifyDatabase } from '../../apps/api/src/proof/verify-database.ts'
import { rebuildAfterUpgrade } from '../../apps/api/src/rebuild-after-upgrade.ts'
import { type LaterShop, makeEarlierShop, openLaterShop } from './upgrades/earlier-shop.ts'

const names = readMigrations().map(({ name }) => name)
/** The first, and the first of which everything verifies; all by `npm run upgrades -- --all`. */
const some = [1, 9]
const states = process.env.UPGRADES_FROM === 'all' ? names.slice(1).map((_, index) => index + 1) : some
/** The states before had no room for sides, for second persons' proofs and for digests: nothing was released then. */
const firstThatVerifies = 9

let later: LaterShop
beforeAll(async () => {
  later = await openLaterShop()
})
afterAll(() => later.drop())

/** What every table of the record holds, as one digest a table. */
const contentOf = (url: string, tables: readonly string[]): Promise<Record<string, string>> =>
  withClient(url, async (client) => {
    const content: Record<string, string> = {}
    for (const table of tables) {
      const { rows } = await client.query<{ all: string }>(
        `select md5(string_agg(t::text, '|' order by t::text)) as all from ${table} t`,
      )
      content[table] = rows[0]?.all ?? ''
    }
    return content
  })

const record = [
  'entries',
  'personal_texts',
  'contact_sides',
  'money_sides',
  'shown_sides',
  'blobs',
  'sealed_reports',
  'received_photos',
  'digests',
]

describe.each(states)('a shop that has the first %i migrations', (state) => {
  it('comes through all later ones with all that it holds', async () => {
    const { database, tables, refused } = await makeEarlierShop(later, state)
    try {
      expect(refused).toEqual({})
      const before = await withClient(database.url, (client) => countRows(client, tables))
      const applied = await bringUpToDate({ serviceUrl: database.serviceUrl, ownerUrl: database.url })
      expect(applied).toEqual(names.slice(state))
      expect(await rebuildAfterUpgrade(database.url, applied)).toBe(24)
      const after = await withClient(database.url, (client) => countRows(client, tables))
      for (const table of tables) expect(after[table], table).toBeGreaterThanOrEqual(before[table] ?? 0)
      const kept = record.filter((table) => tables.includes(table))
      expect(await contentOf(database.url, kept)).toEqual(await contentOf(later.database.url, kept))

      if (state < firstThatVerifies) return
      const pool = openPool({ url: database.serviceUrl, size: 1, onIdleError: () => undefined })
      const places = { dataFolder: later.folder, digestFolder: join(later.folder, 'digests') }
      const { faults, ...sums } = await verifyDatabase(pool, places, () => undefined).finally(() =>
        pool.end(),
      )
      expect(faults.map(faultLine)).toEqual([])
      expect(sums).toMatchObject({ orders: 24, entries: 827, reports: 9, days: 1 })
    } finally {
      await database.drop()
    }
  })
})
