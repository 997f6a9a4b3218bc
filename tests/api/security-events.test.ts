import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, cookiesIn, startTestApp, type TestApp } from '../support/app.ts'

/** What an owner can read of who came in, who failed and what was changed. */
let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const { devin, bo } = people
const day = '2026-01-12'
const listed = async (more = '') =>
  (await owner.get(`/api/security-events?from=${day}&to=${day}${more}`).expect(200)).body.events
const kindsOf = (events: readonly { kind: string }[]) => events.map(({ kind }) => kind)
const wrongPassword = 'a canary that flew by'
const given = 'seven herons in a row'
const newPassword = 'eight herons in a row'
const secrets: string[] = [wrongPassword, given, newPassword, '730164', '847261', devin.password, bo.pin]

describe('the list of security events', () => {
  it('names sign-ins, failures as one line, waits, and who set, changed, exported and withdrew what', async () => {
    for (let tries = 0; tries < 5; tries += 1)
      await shop.nobody.post('/api/sessions/desk', { name: 'devin', password: wrongPassword }).expect(401)
    const tablet = await shop.tablet()
    await tablet.post('/api/sessions/bay', { staffId: bo.id, pin: '847261' }).expect(401)
    const bay = await tablet.signIn('bo')
    const path = `/api/people/${devin.id}`
    const version = async () => ({ 'if-match': `"${(await owner.get(path)).body.record.version}"` })
    await owner.put(`${path}/pin`, { pin: '730164', present: null }, await version()).expect(200)
    await owner.put(`${path}/password`, { password: given, present: null }, await version()).expect(200)
    const { content } = (await owner.get(path)).body.record
    await owner
      .put(path, { content: { ...content, roles: ['advisor', 'manager'] } }, await version())
      .expect(200)
    await owner.get('/api/people.csv').expect(200)
    await owner.delete(`/api/people/${bo.id}/sessions`).expect(200)
    const signedIn = await shop.nobody.post('/api/sessions/desk', { name: 'devin', password: given })
    const desk = shop.withCookies(cookiesIn(signedIn))
    await desk.put(`${path}/password`, { password: newPassword, present: given }, await version()).expect(200)
    await desk.post('/api/sessions/current/proof', { password: newPassword }).expect(204)
    await desk.delete('/api/sessions/current').expect(204)
    secrets.push(...[...owner.cookies, ...bay.cookies, ...desk.cookies].map((one) => one.split('=')[1] ?? ''))

    const events = await listed(`&staffId=${devin.id}`)
    expect(events).toEqual(
      expect.arrayContaining(
        [
          { kind: 'sign-in-failed', count: 5, about: devin.name },
          { kind: 'wait-began', about: devin.name },
          { kind: 'pin-set', by: 'Marguerite Ashby-Bell', about: devin.name },
          { kind: 'password-set', by: 'Marguerite Ashby-Bell', about: devin.name },
          { kind: 'signed-in', by: devin.name },
          { kind: 'proven-again', by: devin.name },
          { kind: 'signed-out', by: devin.name },
        ].map((line) => expect.objectContaining(line)),
      ),
    )
    expect(events[0]).toMatchObject({ kind: 'signed-out' })
    const first = events.findLast(({ details }: { details: { roles?: string[] } }) =>
      details.roles?.includes('manager'),
    )
    expect(first).toMatchObject({ kind: 'person-changed', by: 'Marguerite Ashby-Bell' })
    expect(kindsOf(await listed(`&staffId=${bo.id}`))).toEqual(
      expect.arrayContaining(['pin-failed', 'signed-in', 'session-ended']),
    )
    expect(kindsOf(await listed())).toEqual(
      expect.arrayContaining(['tablet-code-made', 'tablet-let-in', 'file-exported']),
    )
  })

  it('holds no PIN, no password, no cookie and no name as it was typed', async () => {
    await shop.nobody.post('/api/sessions/desk', { name: 'My-Password-1', password: 'x' }).expect(401)
    const { rows } = await shop.deps.pool.query('select e::text as line from security_events e')
    expect(rows.length).toBeGreaterThan(10)
    for (const { line } of rows)
      for (const secret of [...secrets, 'My-Password-1'])
        expect(line.toLowerCase()).not.toContain(secret.toLowerCase())
  })

  it('is read by an owner, day by day, and by nobody else', async () => {
    expect((await owner.get('/api/security-events?from=2026-01-11&to=2026-01-11')).body.events).toEqual([])
    await (await shop.desk('ottoline')).get(`/api/security-events?from=${day}&to=${day}`).expect(403)
  })

  it('is added to by the service and not changed, and forgets after 400 days', async () => {
    for (const statement of ['update security_events set kind = kind', 'delete from security_events'])
      await expect(shop.deps.pool.query(statement)).rejects.toMatchObject({ code: '42501' })
    const old = `insert into security_events (shop_id, id, at, kind, details, recorded_at)
      values ($1, gen_random_uuid(), $2, 'signed-in', '{}', now() - $3 * interval '1 day')`
    for (const daysAgo of [401, 399])
      await shop.deps.pool.query(old, [shop.deps.shopId, '2020-05-05T12:00:00Z', daysAgo])
    const { rows } = await shop.deps.pool.query("select id from security_events where at < '2021-01-01'")
    expect(rows).toHaveLength(1)
  })
})
