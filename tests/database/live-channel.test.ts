import { setTimeout as pause } from 'node:timers/promises'
import { withClient } from '@bayledger/db/with-client'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openChannel } from '../../apps/api/src/http/live-channel.ts'
import { createTestDatabase, type TestDatabase } from '../support/database.ts'

let database: TestDatabase
beforeAll(async () => {
  database = await createTestDatabase()
})
afterAll(() => database.drop())

/** The database takes connections or none; those that there are end. */
const lets = (open: boolean): Promise<unknown> => {
  const name = new URL(database.url).pathname.slice(1)
  const elsewhere = new URL(database.adminUrl)
  elsewhere.pathname = '/postgres'
  return withClient(elsewhere.href, async (client) => {
    await client.query(`alter database ${name} allow_connections ${open}`)
    if (!open)
      await client.query('select pg_terminate_backend(pid) from pg_stat_activity where datname = $1', [name])
  })
}

it('a database that is away is said once, however often it is looked for, and so is that it is back', async () => {
  const said: string[] = []
  const pollMs = 10
  const channel = await openChannel(
    database.serviceUrl,
    {
      wake: () => undefined,
      sessionEnded: (sessionId) => said.push(`any session may have ended: ${sessionId === null}`),
      reportFault: (words) => said.push(words),
      reportRecovery: (words) => said.push(words),
    },
    pollMs,
  )
  await lets(false)
  await expect.poll(() => said).toContain('looking for changes failed')
  // It is looked for many times meanwhile; were it said each time, it would be here more than once.
  await pause(50 * pollMs)
  await lets(true)
  await expect.poll(() => said.at(-1)).toBe('changes are found again')
  await channel.close()
  // Whichever comes first: the connection ends, or the next look at it fails.
  expect(said.toSorted()).toEqual([
    'any session may have ended: true',
    'changes are found again',
    'looking for changes failed',
    'the live connection was lost',
  ])
})
