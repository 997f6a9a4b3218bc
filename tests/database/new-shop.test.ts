import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { withClient } from '@bayledger/db/with-client'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { passwordMatches } from '../../apps/api/src/features/sessions/service/hash-password.ts'
import { createTestDatabase, type TestDatabase } from '../support/database.ts'

let database: TestDatabase
beforeAll(async () => {
  database = await createTestDatabase()
})
afterAll(() => database.drop())

const command = async (...words: string[]) => {
  const child = spawn(process.execPath, ['apps/api/src/commands/new-shop.ts', ...words], {
    env: { ...process.env, DATABASE_URL: database.serviceUrl, DATABASE_OWNER_URL: database.url },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let said = ''
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (text) => {
      said += text
    })
  const [status] = (await once(child, 'close')) as [number | null]
  return { status, said }
}
const owners = () =>
  withClient(
    database.url,
    async (client) =>
      (
        await client.query(
          'select roles, password_hash, first_password_until, pin_hash from staff where active',
        )
      ).rows,
  )

describe('npm run shop:new', () => {
  it('says what is wrong with each word, and makes nothing', async () => {
    const { status, said } = await command('Corner Tire', '', 'A. Owner', 'high', 'Nowhere')
    expect(status).toBe(2)
    for (const fault of [
      'owner needs a name',
      'small letters',
      'whole number of feet',
      'such as America/New_York',
    ])
      expect(said).toContain(fault)
    expect(await owners()).toEqual([])
  })

  it('makes the shop with an owner whose first password it shows, and no second one by mistake', async () => {
    const made = await command('Corner Tire', 'A. Owner', 'owner', '820', 'America/New_York')
    expect(made.status, made.said).toBe(0)
    const [owner, ...others] = await owners()
    expect(others).toEqual([])
    expect(owner.roles).toEqual(['owner'])
    const password = /the password (\S+)/.exec(made.said)?.[1] ?? ''
    expect(await passwordMatches(password, owner.password_hash)).toBe(true)
    expect(owner.pin_hash).toBeNull()
    const days = (owner.first_password_until.getTime() - Date.now()) / 86_400_000
    expect(Math.round(days)).toBe(7)
    const again = await command('Another Tire', 'B. Owner', 'owner', '820', 'America/New_York')
    expect(again).toMatchObject({ status: 1, said: expect.stringContaining('nothing was changed') })
    expect(await owners()).toHaveLength(1)
  })
})
