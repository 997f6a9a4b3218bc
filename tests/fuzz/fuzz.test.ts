import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { openPool } from '@bayledger/db/pool'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { verifyDatabase } from '../../apps/api/src/proof/verify-database.ts'
import type { TestApp } from '../support/app.ts'
import type { FuzzTarget } from './callers.ts'
import { fuzz } from './fuzz.ts'
import { startFuzzShop } from './fuzz-shop.ts'

/** A few hundred requests of those that `npm run fuzz` sends by the thousand. */
let shop: TestApp
let target: FuzzTarget
beforeAll(async () => {
  ;({ shop, target } = await startFuzzShop())
})
afterAll(() => shop.stop())

it('answers whatever it is sent at a declared status and in its own words, and what it accepts verifies', async () => {
  const said: string[] = []
  const { faults, statuses, accepted, reached } = await fuzz(target, {
    requests: 250,
    seed: 20260112,
    rightFirst: 0,
    say: (line) => said.push(line),
    slowestMs: null,
  })
  expect(
    faults.map(({ what }) => what),
    said.join('\n'),
  ).toEqual([])
  // It got through to what it calls: a run of refusals alone would say nothing.
  expect(statuses.get(200)).toBeGreaterThan(20)
  expect(statuses.get(422)).toBeGreaterThan(20)
  expect(reached.size).toBeGreaterThan(20)

  const pool = openPool({ url: shop.url, size: 1, onIdleError: () => undefined })
  const data = mkdtempSync(join(tmpdir(), 'bayledger-fuzz-'))
  try {
    const { rows } = await pool.query('select from entries where id = any ($1::uuid[])', [accepted])
    expect(rows).toHaveLength(new Set(accepted).size)
    const places = { dataFolder: data, digestFolder: join(data, 'digests') }
    expect((await verifyDatabase(pool, places, () => undefined)).faults).toEqual([])
  } finally {
    await pool.end()
    rmSync(data, { recursive: true, force: true })
  }
}, 240_000)
