import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type PersonKey, people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, cookiesIn, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { envelopeOf, replayOn } from '../support/replay-order.ts'
import { signedParcel } from '../support/tablet-key.ts'

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const pathOf = (who: PersonKey) => `/api/people/${people[who].id}`
const read = async (id: string) => (await owner.get(`/api/people/${id}`).expect(200)).body
const recordOf = async (who: PersonKey) => (await read(people[who].id)).record
const saved = (path: string, version: number, body: object, by = owner) =>
  by.put(path, body, { 'if-match': `"${version}"` })
const change = async (who: PersonKey, content: object) => {
  const { version, content: now } = await recordOf(who)
  return saved(pathOf(who), version, { content: { ...now, ...content } })
}
const added = (content: object) =>
  owner.post(
    '/api/people',
    { content: { name: 'Pell Orrin', roles: ['technician'], active: true, ...content } },
    { 'idempotency-key': randomUUID() },
  )

describe('the people of a shop', () => {
  it('are kept by the owner only, and never with a secret', async () => {
    expect((await (await shop.desk('ottoline')).get('/api/people').expect(403)).body.code).toBe(
      'ACCESS_REFUSED',
    )
    const { body, text } = await owner.get('/api/people').expect(200)
    expect(body.records).toHaveLength(Object.keys(people).length)
    expect(text).not.toMatch(/argon2|hash/i)
  })

  it('join, get a PIN and a password from an owner, and sign in; the history tells neither', async () => {
    const { body: pell } = await added({ signInName: 'pell' }).expect(201)
    expect(pell.facts).toEqual({ hasPin: false, hasPassword: false })
    const path = `/api/people/${pell.id}`
    await saved(`${path}/pin`, 1, { pin: '730164', present: null }).expect(200)
    const { body } = await saved(`${path}/password`, 2, { password: 'orrin at noon', present: null }).expect(
      200,
    )
    expect(body).toMatchObject({ version: 3, facts: { hasPin: true, hasPassword: true } })
    await shop.nobody.post('/api/sessions/desk', { name: 'pell', password: 'orrin at noon' }).expect(201)
    const { history } = await read(pell.id)
    expect(history.map(({ by, content }: { by: string; content: object }) => [by, content])).toMatchObject([
      ['Marguerite Ashby-Bell', { pinVersion: 2, passwordVersion: 2 }],
      ['Marguerite Ashby-Bell', { pinVersion: 2, passwordVersion: 1 }],
      ['Marguerite Ashby-Bell', { pinVersion: 1, passwordVersion: 1, roles: ['technician'] }],
    ])
    expect(JSON.stringify(history)).not.toMatch(/730164|orrin at noon|argon2/)
  })

  it('have a sign-in name of their own, small or large, also after somebody left', async () => {
    for (const signInName of ['bo', 'BO'])
      expect((await added({ signInName })).status).toBe(signInName === 'bo' ? 409 : 422)
    const { body } = await added({ signInName: 'bo' })
    expect(body).toMatchObject({ code: 'SIGN_IN_NAME_TAKEN' })
    expect(body.detail).toMatch(/Choose another/)
    expect((await change('bo', { signInName: 'ines' })).body.code).toBe('SIGN_IN_NAME_TAKEN')
  })

  it('are not overwritten by the second of two owners, who gets both versions', async () => {
    await change('greta', { roles: ['lead', 'owner'] })
    const other = await shop.desk('greta')
    const { version, content } = await recordOf('devin')
    await saved(pathOf('devin'), version, { content: { ...content, roles: ['advisor', 'manager'] } }).expect(
      200,
    )
    const sent = { ...content, name: 'Devin Marrow-Lane' }
    const { body, headers } = await saved(pathOf('devin'), version, { content: sent }, other).expect(412)
    expect(headers['cache-control'], 'a stale version is not stored by a browser').toBe('no-store')
    expect(body).toMatchObject({
      code: 'VERSION_STALE',
      current: { version: version + 1, content: { roles: ['advisor', 'manager'] } },
      sent: { name: 'Devin Marrow-Lane' },
    })
    expect(
      (await saved(`${pathOf('devin')}/pin`, version, { pin: '730164', present: null }, other)).status,
    ).toBe(412)
    await change('greta', { roles: ['lead'] })
  })
})

describe('the last owner', () => {
  it('can neither leave nor lay the role down, and hears what to do', async () => {
    for (const content of [{ active: false }, { roles: ['advisor'] }]) {
      const { body } = await change('marguerite', content)
      expect(body.code).toBe('LAST_OWNER')
      expect(body.detail).toMatch(/Make somebody else an owner first/)
    }
    expect((await recordOf('marguerite')).content).toMatchObject({ active: true, roles: ['owner'] })
  })
})

describe('a PIN and a password', () => {
  it.each(['123456', '111111', '121212', '12345', 'abcdef'])('%s is no PIN', async (pin) => {
    const { version } = await recordOf('ines')
    const { body } = await saved(`${pathOf('ines')}/pin`, version, { pin, present: null }).expect(422)
    expect(body.code).toBe('PIN_UNSUITABLE')
  })

  it.each(['Password2026!', 'qwerty123456'])('%s is no password: many people take it', async (password) => {
    const { version } = await recordOf('ines')
    const path = `${pathOf('ines')}/password`
    const { body } = await saved(path, version, { password, present: null }).expect(422)
    expect(body).toMatchObject({
      code: 'PASSWORD_UNSUITABLE',
      detail: expect.stringMatching(/Many people take this password/),
    })
  })

  it('are not taken up again by the same person', async () => {
    const { version } = await recordOf('ines')
    const { pin, password } = people.ines
    const again = await saved(`${pathOf('ines')}/pin`, version, { pin, present: null }).expect(422)
    expect(again.body.detail).toMatch(/was there before/)
    const { body } = await saved(`${pathOf('ines')}/password`, version, { password, present: null }).expect(
      422,
    )
    expect(body).toMatchObject({ code: 'PASSWORD_UNSUITABLE' })
    expect((await recordOf('ines')).version).toBe(version)
  })

  it('are changed by whoever proves the present one, and by nobody else but an owner', async () => {
    const technician = await shop.desk('bo')
    const { body: own } = await technician.get('/api/own-record').expect(200)
    const path = pathOf('bo')
    const wrong = await saved(`${path}/pin`, own.version, { pin: '730164', present: '000000' }, technician)
    expect([wrong.status, wrong.body.code]).toEqual([401, 'PIN_REFUSED'])
    const unproven = await saved(
      `${path}/password`,
      own.version,
      { password: 'a new one here', present: null },
      technician,
    )
    expect([unproven.status, unproven.body.code]).toEqual([422, 'PASSWORD_REFUSED'])
    const proof = people.bo.pin
    const set = await saved(`${path}/pin`, own.version, { pin: '730164', present: proof }, technician).expect(
      200,
    )
    const of = { password: 'a new one here', present: people.bo.password }
    await saved(`${path}/password`, set.body.version, of, technician).expect(200)
    await technician.get('/api/floor').expect(200)
    const { body } = await saved(
      `${pathOf('ottoline')}/pin`,
      1,
      { pin: '730164', present: null },
      technician,
    ).expect(403)
    expect(body.code).toBe('ACCESS_REFUSED')
  })

  it('opens nothing to whom an owner gave it until they choose their own, which opens all', async () => {
    const { signInName: name, pin } = people.rufus
    const given = 'a loose hubcap'
    const { version } = await recordOf('rufus')
    await saved(`${pathOf('rufus')}/password`, version, { password: given, present: null }).expect(200)
    const reply = await shop.nobody.post('/api/sessions/desk', { name, password: given }).expect(201)
    expect(reply.body.awaits).toBe('password')
    const rufus = shop.withCookies(cookiesIn(reply))
    expect((await rufus.get('/api/floor').expect(403)).body.code).toBe('SIGN_IN_UNFINISHED')
    const { body: own } = await rufus.get('/api/own-record').expect(200)
    const path = `${pathOf('rufus')}/password`
    await saved(path, own.version, { password: given, present: given }, rufus).expect(422)
    await saved(`${pathOf('rufus')}/pin`, own.version, { pin: '730164', present: pin }, rufus).expect(403)
    await saved(path, own.version, { password: 'rain on the roof', present: given }, rufus).expect(200)
    await rufus.get('/api/floor').expect(200)
    const next = await shop.nobody.post('/api/sessions/desk', { name, password: 'rain on the roof' })
    expect(next.body.awaits).toBeUndefined()
  })

  it('does not let an owner who has to choose their own give somebody else one', async () => {
    const unfinished = await shop.desk('marguerite')
    const awaiting = `update sessions set awaits = 'password'
      where id = (select id from sessions where staff_id = $1 order by created_at desc, id desc limit 1)`
    await shop.deps.pool.query(awaiting, [people.marguerite.id])
    const { version } = await recordOf('greta')
    const given = { password: 'a loose hubcap', present: null }
    const { body } = await saved(`${pathOf('greta')}/password`, version, given, unfinished).expect(403)
    expect(body.code).toBe('SIGN_IN_UNFINISHED')
  })

  it('is taken for seven days where somebody else gave it', async () => {
    const { version } = await recordOf('greta')
    const given = { password: 'a loose hubcap', present: null }
    await saved(`${pathOf('greta')}/password`, version, given).expect(200)
    const now = shop.clock.now().toISOString()
    shop.clock.advance(7 * 86_400_000)
    const typed = { name: people.greta.signInName, password: given.password }
    const { body } = await shop.nobody.post('/api/sessions/desk', typed).expect(401)
    expect(body.detail).toMatch(/good for seven days/)
    shop.clock.set(now)
    await shop.nobody.post('/api/sessions/desk', typed).expect(201)
  })

  it('end the other sessions of the person, so that whoever knew the old one is out', async () => {
    const devin = await shop.desk('devin')
    await devin.get('/api/floor').expect(200)
    const { version } = await recordOf('devin')
    await saved(`${pathOf('devin')}/password`, version, {
      password: 'marrow by night',
      present: null,
    }).expect(200)
    await devin.get('/api/floor').expect(401)
  })
})

describe('a person who leaves while signed in on a tablet', () => {
  it('is out at once and hears so; what they tapped comes home, and what they signed keeps their name', async () => {
    const replay = await replayOn(shop)
    const { orderId, lines } = freshCopy(shop.demo, 'T-2603')
    await replay.sendUntil(lines, ({ draft }) => draft.kind === 'telltale.observed')
    const signed = lines.find(({ draft }) => draft.kind === 'wheel.checked')?.draft.writtenBy
    const who = Object.entries(people).find(([, { id }]) => signed?.kind === 'staff' && id === signed.staffId)
    const key = (who?.[0] ?? 'ines') as PersonKey
    const tablet = await shop.tablet()
    const here = await tablet.signIn(key)
    const seen = lines.find(({ draft }) => draft.kind === 'telltale.observed')
    if (!seen) throw new Error('nobody observes the warning light in this order')
    const tapped = { ...envelopeOf(seen.draft), id: randomUUID(), orderId, restsOn: [] }

    expect((await change(key, { active: false })).status).toBe(200)
    await here.get('/api/floor').expect(401)
    const { id: staffId, pin, signInName, password } = people[key]
    const refused = await tablet.post('/api/sessions/bay', { staffId, pin }).expect(401)
    expect(refused.body.detail).toMatch(/not among the people.*kept under your name/)
    const atDesk = await shop.nobody.post('/api/sessions/desk', { name: signInName, password }).expect(401)
    expect(atDesk.body.detail).toBe(refused.body.detail)
    const guessed = await tablet.post('/api/sessions/bay', { staffId, pin: '000000' }).expect(401)
    expect(guessed.body.detail).toMatch(/Type the six digits again/)

    const parcel = signedParcel(tablet.key, tablet.deviceId, { staffId, entries: [tapped] })
    const { body: home } = await tablet.post('/api/bay/parcels', parcel).expect(200)
    expect(home.results[0]).toMatchObject({ result: 'refused', code: 'WRITER_NOT_ACTIVE', kept: true })
    const { body: tray } = await owner.get('/api/refused-entries').expect(200)
    expect(tray.refused.map(({ id }: { id: string }) => id)).toContain(tapped.id)
    const { body: listed } = await owner.get('/api/staff').expect(200)
    expect(listed.former).toContainEqual({ staffId, name: people[key].name })
    expect(listed.staff.map((one: { staffId: string }) => one.staffId)).not.toContain(staffId)

    expect((await change(key, { active: true })).status).toBe(200)
    await tablet.signIn(key)
  })
})
