import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { cookiesIn, startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
beforeAll(async () => {
  shop = await startTestApp()
})
afterAll(() => shop.stop())

const { ottoline, rufus, greta } = people
const minutes = (count: number) => count * 60_000
/** What the desk says of a read while somebody uses it. */
const byPerson = { 'bayledger-act': 'person' }

describe('signing in at the desk', () => {
  it('gives a session in a cookie that no script reads and no other site sends', async () => {
    const reply = await shop.nobody
      .post('/api/sessions/desk', { name: ottoline.signInName, password: ottoline.password })
      .expect(201)
    expect(reply.body).toMatchObject({ kind: 'desk', staff: { name: ottoline.name }, device: null })
    const [cookie] = reply.headers['set-cookie'] as unknown as string[]
    expect(cookie).toMatch(/^bayledger-desk=[\w-]{43}; .*HttpOnly; SameSite=Strict/)
    expect(JSON.stringify(reply.body)).not.toContain(cookie?.slice(15, 58))
  })

  it('keeps nothing but the digest of the token', async () => {
    const desk = await shop.desk('devin')
    const token = desk.cookies[0]?.split('=')[1] ?? ''
    const { rows } = await shop.deps.pool.query('select s::text as line from sessions s')
    expect(rows.length).toBeGreaterThan(0)
    for (const { line } of rows) expect(line).not.toContain(token)
  })

  it('answers an unknown name and a wrong password with the same words', async () => {
    const unknown = await shop.nobody
      .post('/api/sessions/desk', { name: 'nobody-here', password: 'x' })
      .expect(401)
    const wrong = await shop.nobody.post('/api/sessions/desk', { name: 'devin', password: 'x' }).expect(401)
    expect(unknown.body.code).toBe('SIGN_IN_REFUSED')
    expect({ ...unknown.body, requestId: '' }).toEqual({ ...wrong.body, requestId: '' })
  })

  it('ends after half an hour of nothing, and after twelve hours of anything', async () => {
    const start = shop.clock.now().toISOString()
    const idle = await shop.desk('ottoline')
    shop.clock.advance(minutes(30))
    await idle.get('/api/sessions/current').expect(200)
    shop.clock.advance(minutes(31))
    expect((await idle.get('/api/sessions/current').expect(401)).body.code).toBe('SESSION_EXPIRED')

    const busy = await shop.desk('ottoline')
    for (let used = 0; used < 12 * 60 - 20; used += 20) {
      shop.clock.advance(minutes(20))
      await busy.call('get', '/api/sessions/current', byPerson).expect(200)
    }
    shop.clock.advance(minutes(20))
    await busy.get('/api/sessions/current').expect(401)
    shop.clock.set(start)
  })

  it('ends the session that the same browser held', async () => {
    const before = await shop.desk('ottoline')
    const again = await before.post('/api/sessions/desk', {
      name: ottoline.signInName,
      password: ottoline.password,
    })
    expect((await before.get('/api/floor').expect(401)).body.code).toBe('SESSION_EXPIRED')
    await shop.withCookies(cookiesIn(again)).get('/api/floor').expect(200)
  })

  it('is not kept open by what a page reads by itself, only by what a person does', async () => {
    const start = shop.clock.now().toISOString()
    const left = await shop.desk('ottoline')
    const used = await shop.desk('ottoline')
    for (let passed = 0; passed < 40; passed += 10) {
      await left.get('/api/floor').expect(200)
      await used.call('get', '/api/floor', byPerson).expect(200)
      if (passed < 30) shop.clock.advance(minutes(10))
    }
    shop.clock.advance(1)
    expect((await left.get('/api/floor').expect(401)).body.code).toBe('SESSION_EXPIRED')
    shop.clock.advance(minutes(20))
    await used.post('/api/orders/019bb000-0000-7000-8000-000000000000/links').expect(404)
    shop.clock.advance(minutes(25))
    await used.get('/api/floor').expect(200)
    shop.clock.set(start)
  })

  it('makes the token worthless at sign-out', async () => {
    const desk = await shop.desk('ottoline')
    await desk.delete('/api/sessions/current').expect(204)
    expect((await desk.get('/api/floor').expect(401)).body.code).toBe('SESSION_EXPIRED')
  })
})

describe('signing in on a tablet', () => {
  it('takes an enrolled tablet and a PIN, and neither without the other', async () => {
    const alone = await shop.nobody
      .post('/api/sessions/bay', { staffId: rufus.id, pin: rufus.pin })
      .expect(401)
    expect(alone.body.code).toBe('DEVICE_UNKNOWN')
    const tablet = await shop.tablet()
    const wrong = await tablet.post('/api/sessions/bay', { staffId: rufus.id, pin: '000000' }).expect(401)
    expect(wrong.body.code).toBe('PIN_REFUSED')
    expect((await tablet.get('/api/floor').expect(401)).body.code).toBe('SESSION_MISSING')
    const bay = await tablet.signIn('rufus')
    const { body } = await bay.get('/api/sessions/current').expect(200)
    expect(body).toMatchObject({
      kind: 'bay',
      staff: { staffId: rufus.id },
      device: { deviceId: tablet.deviceId },
    })
  })

  it('signs the one before out when a second person takes the tablet', async () => {
    const tablet = await shop.tablet()
    const first = await tablet.signIn('rufus')
    const second = await tablet.signIn('greta')
    await first.get('/api/sessions/current').expect(401)
    expect((await second.get('/api/sessions/current').expect(200)).body.staff.staffId).toBe(greta.id)
  })

  it('lets no more than five guesses through, however many come at once', async () => {
    const tablet = await shop.tablet()
    const replies = await Promise.all(
      Array.from({ length: 20 }, (_, guess) =>
        tablet.post('/api/sessions/bay', { staffId: greta.id, pin: String(100_000 + guess) }),
      ),
    )
    expect(replies.filter(({ status }) => status === 401)).toHaveLength(5)
    expect(replies.filter(({ status }) => status === 429)).toHaveLength(15)
  })

  it('keeps desk and bay of one browser apart by the requesting face', async () => {
    const tablet = await shop.tablet()
    const bay = await tablet.signIn('ines')
    const desk = await shop.desk('ottoline')
    const both = shop.withCookies([...bay.cookies, ...desk.cookies])
    const asked = async (face: string) =>
      (await both.call('get', '/api/sessions/current', { 'bayledger-face': face }).expect(200)).body.kind
    expect(await asked('bay')).toBe('bay')
    expect(await asked('desk')).toBe('desk')
  })
})

describe('enrolling a tablet', () => {
  it('takes a code once, however it is typed, and keeps it as a password is kept', async () => {
    const desk = await shop.desk('ottoline')
    const { body } = await desk.post('/api/enrollment-codes', { locationId: shop.demo.home.id }).expect(201)
    const { rows } = await shop.deps.pool.query('select code_hash as hash from enrollment_codes')
    expect(rows.length).toBeGreaterThan(0)
    for (const { hash } of rows) expect(hash).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$[\w+/]{22}\$/)
    const typed = body.code.toLowerCase().replace('-', ' ')
    const enrolled = await shop.nobody.post('/api/devices', { code: typed, name: 'Bay 7' }).expect(201)
    expect(cookiesIn(enrolled)[0]).toMatch(/^bayledger-device=/)
    const again = await shop.nobody.post('/api/devices', { code: typed, name: 'Bay 8' }).expect(422)
    expect(again.body.code).toBe('ENROLLMENT_CODE_REFUSED')
    const device = shop.withCookies(cookiesIn(enrolled))
    expect((await device.get('/api/devices/current').expect(200)).body.name).toBe('Bay 7')
    expect((await device.get('/api/staff').expect(200)).body.staff.length).toBe(7)
  })

  it('refuses a code after ten minutes', async () => {
    const start = shop.clock.now().toISOString()
    const desk = await shop.desk('ottoline')
    const { body } = await desk.post('/api/enrollment-codes', { locationId: shop.demo.home.id }).expect(201)
    shop.clock.advance(minutes(10))
    await shop.nobody.post('/api/devices', { code: body.code, name: 'Bay 7' }).expect(422)
    shop.clock.set(start)
  })

  it('is started only by the desk', async () => {
    const bay = await (await shop.tablet()).signIn('rufus')
    const reply = await bay.post('/api/enrollment-codes', { locationId: shop.demo.home.id }).expect(403)
    expect(reply.body.code).toBe('ACCESS_REFUSED')
  })

  it('refuses a place that is not the shop’s', async () => {
    const desk = await shop.desk('ottoline')
    const locationId = '019bb000-0000-7000-8000-000000000000'
    const reply = await desk.post('/api/enrollment-codes', { locationId }).expect(422)
    expect(reply.body.fields[0].field).toBe('locationId')
  })
})
