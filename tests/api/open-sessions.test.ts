import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'

/** Where a person is signed in, and what needs a recent proof of it. */
let shop: TestApp
beforeAll(async () => {
  shop = await startTestApp()
})
afterAll(() => shop.stop())

const { devin } = people
const minutes = (count: number) => count * 60_000

describe('the sessions of a person', () => {
  const listed = async (by: Caller, id: string = devin.id) =>
    (await by.get(`/api/people/${id}/sessions`).expect(200)).body.sessions

  it('are listed to them with browser, place and times, and ended one by one or all others at once', async () => {
    const [here, there, third] = [
      await shop.desk('devin'),
      await shop.desk('devin'),
      await shop.desk('devin'),
    ]
    const bay = await (await shop.tablet()).signIn('devin')
    const sessions = await listed(here)
    expect(sessions.map(({ kind, device }: Record<string, unknown>) => [kind, device])).toEqual([
      ['bay', 'Bay 9'],
      ['desk', null],
      ['desk', null],
      ['desk', null],
    ])
    expect(sessions.map(({ isThisOne }: { isThisOne: boolean }) => isThisOne)).toEqual([
      false,
      false,
      false,
      true,
    ])
    expect(sessions[0]).toMatchObject({ startedAt: shop.clock.now().toISOString() })
    expect(sessions[0].address).toMatch(/127\.0\.0\.1/)
    await here.delete(`/api/people/${devin.id}/sessions/${sessions[1].sessionId}`).expect(204)
    await third.get('/api/floor').expect(401)
    await there.get('/api/floor').expect(200)
    expect((await here.delete(`/api/people/${devin.id}/sessions`).expect(200)).body).toEqual({ ended: 2 })
    for (const other of [there, bay]) await other.get('/api/floor').expect(401)
    expect(await listed(here)).toHaveLength(1)
  })

  it('are ended by an owner too, and by nobody else', async () => {
    const theirs = await shop.desk('devin')
    const owner = await shop.desk('marguerite')
    const advisor = await shop.desk('ottoline')
    await advisor.get(`/api/people/${devin.id}/sessions`).expect(403)
    await advisor.delete(`/api/people/${devin.id}/sessions`).expect(403)
    expect((await listed(owner)).length).toBeGreaterThan(0)
    await owner.delete(`/api/people/${devin.id}/sessions`).expect(200)
    await theirs.get('/api/floor').expect(401)
    await owner.get('/api/floor').expect(200)
  })
})

describe('a proof that is older than ten minutes', () => {
  it('is renewed with the password before anything that needs one, and only with the right one', async () => {
    const start = shop.clock.now().toISOString()
    const owner = await shop.desk('marguerite')
    const change = () =>
      owner.put(`/api/people/${devin.id}/pin`, { pin: '730164', present: null }, { 'if-match': '"1"' })
    const code = () => owner.post('/api/enrollment-codes', { locationId: shop.demo.home.id })
    await code().expect(201)
    shop.clock.advance(minutes(10) + 1)
    for (const refused of [change(), code()]) expect((await refused).body.code).toBe('PROOF_NEEDED')
    await owner.get('/api/people').expect(200)
    const prove = (password: string) => owner.post('/api/sessions/current/proof', { password })
    expect((await prove('not this one').expect(422)).body.code).toBe('PASSWORD_REFUSED')
    expect((await change()).body.code).toBe('PROOF_NEEDED')
    await prove(people.marguerite.password).expect(204)
    await change().expect(200)
    await code().expect(201)
    shop.clock.set(start)
  })

  it('gives five tries in a session, which lock no sign-in', async () => {
    const owner = await shop.desk('marguerite')
    const prove = (password: string) => owner.post('/api/sessions/current/proof', { password })
    for (let tries = 0; tries < 5; tries += 1) await prove('not this one').expect(422)
    await prove(people.marguerite.password).expect(429)
    await shop.desk('marguerite')
  })
})
