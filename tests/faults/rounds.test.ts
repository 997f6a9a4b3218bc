import { afterAll, beforeAll, expect, it } from 'vitest'
import { createTestDatabase, type TestDatabase } from '../support/database.ts'
import { loadShopWithoutOrders } from '../support/shop-without-orders.ts'
import { runRounds } from './support/rounds.ts'

/**
 * A short round of `npm run faults`. Its seed plans a storm, lost answers, requests that come twice and out of order, a tablet out
 * of range, an undoing, a page that crashes, a power cut and a server that is killed, in twelve steps.
 */
const seed = 266
const steps = 6

let database: TestDatabase
beforeAll(async () => {
  database = await createTestDatabase()
  await loadShopWithoutOrders(database.serviceUrl, new Date().toISOString())
})
afterAll(() => database.drop())

it('loses nothing, writes nothing twice, and all hold the same afterwards', async () => {
  const said: string[] = []
  const urls = { ownerUrl: database.url, serviceUrl: database.serviceUrl }
  const { entries, ...wrong } = await runRounds(urls, [seed], (line) => said.push(line), steps)
  expect(wrong, said.join('\n')).toEqual({ lost: 0, twice: 0, diverged: 0, broken: 0 })
  expect(entries).toBeGreaterThan(6)
}, 600_000)
