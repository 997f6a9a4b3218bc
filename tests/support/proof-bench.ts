import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { openPool } from '@bayledger/db/pool'
import { withClient } from '@bayledger/db/with-client'
import type { Pool } from 'pg'
import { faultLine } from '../../apps/api/src/proof/finding.ts'
import { type Verification, verifyDatabase } from '../../apps/api/src/proof/verify-database.ts'
import { writeDigest } from '../../apps/api/src/proof/write-digest.ts'
import { startTestApp, type TestApp } from './app.ts'
import { type Replay, replayOn } from './replay-order.ts'

/** A shop with digests of its own, whose record tests alter and verify. */
export type ProofBench = {
  readonly shop: TestApp
  readonly replay: Replay
  /** One connection, as verifying needs it. */
  readonly pool: Pool
  /** The data folder, with the digests and their key. */
  readonly folder: string
  readonly digestFile: (number: number) => string
  readonly makeDigest: (day: string) => ReturnType<typeof writeDigest>
  readonly verified: () => Promise<Verification>
  /** What verifying says, one line a fault. */
  readonly found: () => Promise<string[]>
  /** Runs a statement as superuser with every trigger off, verifies, and puts the table back as it was. */
  readonly altered: (table: string, statement: string, values?: readonly unknown[]) => Promise<string[]>
  readonly stop: () => Promise<void>
}

export const startProofBench = async (): Promise<ProofBench> => {
  const shop = await startTestApp()
  const replay = await replayOn(shop)
  const folder = mkdtempSync(join(tmpdir(), 'bayledger-proof-'))
  const pool = openPool({ url: shop.url, size: 1, onIdleError: () => undefined })
  const shopId = shop.demo.shop.id
  const places = { dataFolder: folder, digestFolder: join(folder, 'digests') }
  const verified = () => verifyDatabase(pool, places, () => undefined)
  const found = async () => (await verified()).faults.map(faultLine)
  return {
    shop,
    replay,
    pool,
    folder,
    digestFile: (number) => join(folder, 'digests', shopId, `${String(number).padStart(6, '0')}.json`),
    makeDigest: (day) =>
      writeDigest(shop.deps.pool, places, { shopId, day, at: shop.clock.now().toISOString() }),
    verified,
    found,
    altered: (table, statement, values = []) =>
      withClient(shop.adminUrl, async (admin) => {
        await admin.query("set session_replication_role = 'replica'")
        await admin.query(`create temp table kept as table ${table}`)
        try {
          const { rowCount } = await admin.query(statement, [...values])
          if (!rowCount) throw new Error(`nothing of ${table} was altered`)
          return await found()
        } finally {
          await admin.query(`delete from ${table}`)
          await admin.query(`insert into ${table} select * from kept`)
          await admin.query('drop table kept')
        }
      }),
    stop: async () => {
      await pool.end()
      await shop.stop()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
