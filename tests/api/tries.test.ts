import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { demoNow, startTestApp, type TestApp } from '../support/app.ts'

/** Guesses at PINs and passwords: how many there are, and whom they hinder. */
let shop: TestApp
beforeAll(async () => {
  shop = await startTestApp()
})
afterAll(() => shop.stop())

const { ottoline, rufus, devin } = people
const minutes = (count: number) => count * 60_000

/** Tries a password from the address of another machine, in a browser that holds these cookies. */
const enter = (address: string, { signInName }: { signInName: string }, password: string, cookie = '') =>
  shop.inject({
    method: 'POST',
    url: '/api/sessions/desk',
    remoteAddress: address,
    headers: { 'sec-fetch-site': 'same-origin', cookie },
    payload: { name: signInName, password },
  })
const statuses = async (calls: number, call: () => Promise<{ statusCode: number }>) => {
  const found: number[] = []
  for (let one = 0; one < calls; one += 1) found.push((await call()).statusCode)
  return found
}

describe('a PIN', () => {
  it('has five tries in the whole shop, on however many tablets', async () => {
    const tablets = await Promise.all(Array.from({ length: 4 }, () => shop.tablet()))
    const guess = (at: number) =>
      tablets[at % 4]?.post('/api/sessions/bay', { staffId: people.marguerite.id, pin: '111111' })
    const replies = []
    for (let tries = 0; tries < 20; tries += 1) replies.push((await guess(tries))?.status)
    expect(replies).toEqual([...Array(5).fill(401), ...Array(15).fill(429)])
  })

  it('is taken on the tablet of the last sign-in, whatever was typed elsewhere', async () => {
    const own = await shop.tablet()
    await own.signIn('rufus')
    const other = await shop.tablet()
    const guess = () => other.post('/api/sessions/bay', { staffId: rufus.id, pin: '111111' })
    for (let tries = 0; tries < 5; tries += 1) await guess().expect(401)
    const refused = await other.post('/api/sessions/bay', { staffId: rufus.id, pin: rufus.pin }).expect(429)
    expect(refused.body).toMatchObject({ code: 'SIGN_IN_BLOCKED', retryAfterSeconds: 60 })
    expect(refused.headers['retry-after']).toBe('60')
    await own.signIn('rufus')
  })

  it('is waited for twice as long after each further wrong try, a quarter of an hour at most', async () => {
    const other = await shop.tablet()
    const guess = () => other.post('/api/sessions/bay', { staffId: rufus.id, pin: '111111' })
    for (const waited of [1, 2, 4, 8, 15, 15]) {
      expect((await guess().expect(429)).body.retryAfterSeconds).toBe(waited * 60)
      // One more is forgotten where the wait is as long as forgetting takes.
      shop.clock.advance(minutes(waited))
      await guess().expect(401)
    }
  })

  it('has all its tries again after some quiet hours', async () => {
    shop.clock.advance(minutes(10 * 15))
    const other = await shop.tablet()
    for (let tries = 0; tries < 4; tries += 1)
      await other.post('/api/sessions/bay', { staffId: rufus.id, pin: '111111' }).expect(401)
    await other.signIn('rufus')
    shop.clock.set(demoNow)
  })
})

describe('a password', () => {
  it('is taken in a browser that the person knows, whatever was typed elsewhere', async () => {
    const known = (await shop.desk('ottoline')).cookies.find((one) => one.startsWith('bayledger-browser='))
    const guesses = await statuses(7, () => enter('192.0.2.7', ottoline, 'a guess of theirs'))
    expect(guesses).toEqual([401, 401, 401, 401, 401, 429, 429])
    expect((await enter('192.0.2.8', ottoline, ottoline.password)).statusCode).toBe(429)
    expect((await enter('192.0.2.8', ottoline, ottoline.password, known)).statusCode).toBe(201)
    expect(
      (await enter('192.0.2.8', ottoline, ottoline.password, 'bayledger-browser=made-up')).statusCode,
    ).toBe(429)
  })

  it('has five tries in that browser too, which lock nobody out elsewhere', async () => {
    const known = (await shop.desk('devin')).cookies.find((one) => one.startsWith('bayledger-browser='))
    const guesses = await statuses(6, () => enter('192.0.2.9', devin, 'a guess of theirs', known))
    expect(guesses).toEqual([401, 401, 401, 401, 401, 429])
    expect((await enter('192.0.2.10', devin, devin.password)).statusCode).toBe(201)
  })

  it('is not tried at many names from one address, while other addresses go on', async () => {
    const names = Array.from({ length: 16 }, (_, number) => ({ signInName: `name-${number}` }))
    const found: number[] = []
    for (const name of names) found.push((await enter('192.0.2.11', name, 'spring of the year')).statusCode)
    expect(found).toEqual([...Array(15).fill(401), 429])
    expect((await enter('192.0.2.12', people.greta, people.greta.password)).statusCode).toBe(201)
  })

  it('leaves of a known browser only a digest behind', async () => {
    const known = (await shop.desk('bo')).cookies.find((one) => one.startsWith('bayledger-browser='))
    const token = known?.split('=')[1] ?? ''
    expect(token).toHaveLength(43)
    const { rows } = await shop.deps.pool.query('select b::text as line from known_browsers b')
    expect(rows.length).toBeGreaterThan(2)
    for (const { line } of rows) expect(line).not.toContain(token)
  })
})
