import { v7 as newId } from 'uuid'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { seedBase } from '../../prisma/seeds/base.ts'
import { people } from '../../prisma/seeds/demo/people.ts'
import { firstHours } from '../../prisma/seeds/first-settings.ts'
import { type Caller, cookiesIn, startTestApp, type TestApp } from '../support/app.ts'
import { type SoftwarePasskey, softwarePasskey } from '../support/software-passkey.ts'

/** A passkey in place of name, password and code. */
let shop: TestApp
let owner: Caller
let advisor: Caller
const passkey = softwarePasskey()
let kept: { readonly passkeyId: string; readonly userId: string }
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const { marguerite, devin } = people
const minutes = (count: number) => count * 60_000
/** Where the desk is open, as the browser says. */
const named = { host: 'localhost:4310' }
const send = (by: Caller, path: string, body: object = {}) => by.call('post', path, named).send(body)

/** A browser in which nobody is signed in, with what its passkey has to sign. */
const door = async (shopId?: string) => {
  const named = shopId === undefined ? {} : { shopId }
  const reply = await send(shop.nobody, '/api/sessions/desk/passkey/challenge', named).expect(201)
  return { browser: shop.withCookies(cookiesIn(reply)), asked: reply.body }
}
type Door = Awaited<ReturnType<typeof door>>
const enter = ({ browser }: Door, sent: object, shopId?: string) =>
  send(browser, '/api/sessions/desk/passkey', { passkey: sent, ...(shopId === undefined ? {} : { shopId }) })
const why = async (reply: PromiseLike<{ body: { code: string; detail: string } }>) => {
  const { body } = await reply
  expect(body.code).toBe('PASSKEY_REFUSED')
  return body.detail
}
const signed = (by: SoftwarePasskey, asked: Door['asked'], besides: object = {}) => {
  by.signCount += 1
  return by.assert({ ...asked, ...besides })
}
const listed = async (by: Caller, id: string = marguerite.id) =>
  (await by.get(`/api/people/${id}/passkeys`).expect(200)).body.passkeys

describe('a passkey', () => {
  it('is kept by name for whoever is signed in, once for each challenge, and only where it checked who holds it', async () => {
    const { body: asked } = await send(owner, '/api/own-passkeys/challenge').expect(201)
    expect(asked).toMatchObject({ rpId: 'localhost', credentialIds: [], userName: marguerite.name })
    expect(Buffer.from(asked.challenge, 'base64url')).toHaveLength(32)
    const add = (sent: object) => send(owner, '/api/own-passkeys', { name: 'Key on the ring', passkey: sent })
    expect(await why(add(passkey.attest({ ...asked, verifies: false })))).toContain('does not fit')
    expect(await why(add(passkey.attest(asked)))).toContain('tried before')
    const { body: again } = await send(owner, '/api/own-passkeys/challenge').expect(201)
    const { body } = await add(passkey.attest(again)).expect(201)
    expect(body).toMatchObject({ name: 'Key on the ring', rpId: 'localhost', lastUsedAt: null })
    kept = { passkeyId: body.passkeyId, userId: asked.userId }
    expect(await listed(owner)).toEqual([body])
    const { body: third } = await send(owner, '/api/own-passkeys/challenge').expect(201)
    expect(third.credentialIds).toEqual([passkey.id])
    expect(await why(add(passkey.attest(third)))).toContain('already')
  })

  it('signs its person in without name, password and code, once for each challenge, in the browser that asked', async () => {
    const first = await door()
    expect(first.asked).toMatchObject({ rpId: 'localhost', credentialIds: [] })
    const sent = signed(passkey, first.asked, { userHandle: kept.userId })
    expect(await why(enter({ ...first, browser: shop.nobody }, sent))).toContain('tried before')
    const reply = await enter(first, sent).expect(201)
    expect(reply.body.staff).toMatchObject({ staffId: marguerite.id })
    await shop.withCookies(cookiesIn(reply)).get('/api/floor').expect(200)
    expect(await why(enter(first, sent))).toContain('tried before')
    // A challenge of its own does not make an old signature a new one.
    expect(await why(enter(await door(), sent))).toContain('does not fit')
    expect((await listed(owner))[0].lastUsedAt).toBe(shop.clock.now().toISOString())
  })

  it.each([
    ['of another origin', { origin: 'http://localhost.example:4310' }],
    ['of another port', { origin: 'http://localhost:4311' }],
    ['for another name', { rpId: 'desk.example', origin: 'http://localhost:4310' }],
    ['without a check of who holds it', { verifies: false }],
    ['for another person', { userHandle: Buffer.from(devin.id).toString('base64url') }],
  ])('does not sign in by a signature %s', async (_what, besides) => {
    const here = await door()
    expect(await why(enter(here, signed(passkey, here.asked, besides)))).toContain('does not fit')
  })

  it('does not sign in by the signature of another key, after five minutes, or with what was for something else', async () => {
    const here = await door()
    const forged = { ...signed(softwarePasskey(), here.asked), id: passkey.id }
    expect(await why(enter(here, forged))).toContain('does not fit')
    const late = await door()
    shop.clock.advance(minutes(5))
    expect(await why(enter(late, signed(passkey, late.asked)))).toContain('five minutes')
    const { body: asked } = await send(owner, '/api/sessions/current/proof/passkey/challenge').expect(201)
    expect(await why(enter(await door(), signed(passkey, asked)))).toContain('does not fit')
  })

  it('is refused, and the owner reads of it, where its count went back', async () => {
    const before = passkey.signCount
    passkey.signCount = 0
    const here = await door()
    expect(await why(enter(here, signed(passkey, here.asked)))).toContain('may be a copy')
    passkey.signCount = before
    const { body } = await owner.get('/api/security-events?from=2026-01-12&to=2026-01-12').expect(200)
    const kinds = body.events.map(({ kind }: { kind: string }) => kind)
    expect(kinds[0]).toBe('passkey-went-back')
    for (const kind of ['passkey-added', 'passkey-failed']) expect(kinds).toContain(kind)
    expect(
      body.events.find(({ details }: { details: { by?: string } }) => details.by === 'passkey'),
    ).toMatchObject({
      kind: 'signed-in',
      by: marguerite.name,
    })
  })

  it('proves again that it is its person, and nobody else', async () => {
    shop.clock.advance(minutes(10) + 1)
    const remove = () => owner.delete(`/api/people/${marguerite.id}/passkeys/${newId()}`)
    expect((await remove()).body.code).toBe('PROOF_NEEDED')
    const { body: asked } = await send(owner, '/api/sessions/current/proof/passkey/challenge').expect(201)
    expect(asked.credentialIds).toEqual([passkey.id])
    advisor = await shop.desk('devin')
    const { body: theirs } = await send(advisor, '/api/sessions/current/proof/passkey/challenge').expect(201)
    const prove = (by: Caller, of: Door['asked']) =>
      send(by, '/api/sessions/current/proof/passkey', { passkey: signed(passkey, of) })
    expect(await why(prove(advisor, theirs))).toContain('Nobody')
    await prove(owner, asked).expect(204)
    await remove().expect(204)
  })

  it('is made neither under an address of numbers nor beyond ten', async () => {
    const { body } = await owner.post('/api/own-passkeys/challenge').expect(409)
    expect(body.code).toBe('PASSKEY_NEEDS_NAME')
    expect(body.detail).toMatch(/Open it at http:\/\/localhost:\d+\/desk/)
    for (let count = 1; count < 10; count += 1) {
      const { body: asked } = await send(owner, '/api/own-passkeys/challenge').expect(201)
      const one = softwarePasskey().attest(asked)
      await send(owner, '/api/own-passkeys', { name: `Key ${count}`, passkey: one }).expect(201)
    }
    expect(await why(send(owner, '/api/own-passkeys/challenge'))).toContain('ten passkeys')
  })

  it('is nobody’s in another shop of the same service', async () => {
    const made = await seedBase({
      prisma: shop.parts.prisma,
      now: shop.clock.now().toISOString(),
      shop: {
        name: 'Second Street Tire',
        placeName: 'Second Street',
        altitudeFeet: 40,
        timeZone: 'America/New_York',
        hours: firstHours,
      },
      owner: { name: 'A. Second', signInName: 'second', password: 'a second street', pin: '418203' },
      hashPassword: shop.hashPassword,
      besideOthers: true,
    })
    if (!made.made) throw new Error('the second shop was not made')
    const there = await door(made.shopId)
    expect(await why(enter(there, signed(passkey, there.asked), made.shopId))).toContain(
      'Nobody of this shop',
    )
    const here = await door(shop.demo.shop.id)
    await enter(here, signed(passkey, here.asked), shop.demo.shop.id).expect(201)
    await send(shop.nobody, '/api/sessions/desk/passkey/challenge', { shopId: newId() }).expect(422)
  })

  it('is seen and removed by its person and an owner, and signs nobody in from then on', async () => {
    const path = `/api/people/${marguerite.id}/passkeys/${kept.passkeyId}`
    await advisor.get(`/api/people/${marguerite.id}/passkeys`).expect(403)
    await advisor.delete(path).expect(403)
    await owner.delete(path).expect(204)
    await owner.delete(path).expect(204)
    expect(await listed(owner)).toHaveLength(9)
    const here = await door(shop.demo.shop.id)
    const sent = signed(passkey, here.asked)
    expect(await why(enter(here, sent, shop.demo.shop.id))).toContain('Nobody of this shop')
  })
})
