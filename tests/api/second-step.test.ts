import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, cookiesIn, startTestApp, type TestApp } from '../support/app.ts'
import { codeShown } from '../support/authenticator.ts'

/** The code of an authenticator app besides the password, and printed codes in its place. */
let shop: TestApp
let owner: Caller
let secret: string
let recovery: readonly string[]
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const { marguerite, devin } = people
const enter = (code?: string, password = marguerite.password) =>
  shop.nobody.post('/api/sessions/desk', {
    name: marguerite.signInName,
    password,
    ...(code === undefined ? {} : { code }),
  })
const codeNow = () => codeShown(secret, shop.clock.now())
const nextStep = () => shop.clock.advance(30_000)
const stateOf = async (by: Caller, id: string = marguerite.id) =>
  (await by.get(`/api/people/${id}/second-step`).expect(200)).body

describe('a code at sign-in', () => {
  it('counts once a code of the app has confirmed it, and gives ten printed codes', async () => {
    const { body: begun } = await owner.post('/api/own-second-step').expect(201)
    secret = begun.secret
    expect(secret).toMatch(/^[A-Z2-7]{32}$/)
    expect(begun.address).toBe(
      `otpauth://totp/${encodeURIComponent(`Bayledger:${marguerite.name}`)}?secret=${begun.secret}&issuer=Bayledger`,
    )
    await enter().expect(201)
    const wrong = await owner.post('/api/own-second-step/confirmation', { code: '12345' }).expect(422)
    expect(wrong.body.code).toBe('SECOND_STEP_REFUSED')
    const { body } = await owner.post('/api/own-second-step/confirmation', { code: codeNow() }).expect(200)
    recovery = body.recoveryCodes
    expect(new Set(recovery).size).toBe(10)
    for (const code of recovery) expect(code).toMatch(/^([2-9A-HJ-NP-Z]{5}-){4}[2-9A-HJ-NP-Z]{5}$/)
    expect(await stateOf(owner)).toEqual({ isOn: true, recoveryCodesLeft: 10 })
  })

  it('is asked for when the password is right, taken once, and not from before', async () => {
    const used = codeNow()
    expect((await enter().expect(401)).body.code).toBe('SECOND_STEP_NEEDED')
    expect((await enter(undefined, 'not the password').expect(401)).body.code).toBe('SIGN_IN_REFUSED')
    expect((await enter(used).expect(422)).body.code).toBe('SECOND_STEP_REFUSED')
    nextStep()
    const signedIn = await enter(codeNow()).expect(201)
    await shop.withCookies(cookiesIn(signedIn)).get('/api/floor').expect(200)
    await enter(codeNow()).expect(422)
  })

  it('is taken once only where the same one comes twice at the same time', async () => {
    nextStep()
    const replies = await Promise.all([enter(codeNow()), enter(codeNow())])
    expect(replies.map(({ status }) => status).toSorted()).toEqual([201, 422])
  })

  it('is replaced by a printed code, once, however it is typed', async () => {
    const [first = ''] = recovery
    await enter(first.toLowerCase().replaceAll('-', ' ')).expect(201)
    await enter(first).expect(422)
    expect(await stateOf(owner)).toEqual({ isOn: true, recoveryCodesLeft: 9 })
  })

  it('has five tries, and asking without a code wins none back', async () => {
    const [, second = ''] = recovery
    await enter(second).expect(201)
    // From another machine: of one address only so many sign-ins a minute are looked at.
    const { signInName: name, password } = marguerite
    const guess = async (code: object) => {
      const payload = { name, password, ...code }
      const headers = { 'sec-fetch-site': 'same-origin' }
      const url = '/api/sessions/desk'
      const reply = await shop.inject({
        method: 'POST',
        url,
        remoteAddress: '192.0.2.30',
        headers,
        payload,
      })
      return reply.json().code
    }
    const seen: string[] = []
    for (let tries = 0; tries < 4; tries += 1) seen.push(await guess({ code: '000000' }), await guess({}))
    seen.push(await guess({ code: '000000' }), await guess({ code: '000000' }), await guess({}))
    expect(seen).toEqual([
      ...Array(4).fill(['SECOND_STEP_REFUSED', 'SECOND_STEP_NEEDED']).flat(),
      'SECOND_STEP_REFUSED',
      'SIGN_IN_BLOCKED',
      'SIGN_IN_BLOCKED',
    ])
  })

  it('lies in the database neither readable nor as a code', async () => {
    const { rows } = await shop.deps.pool.query(
      'select s::text as line from second_steps s union all select r::text from recovery_codes r',
    )
    expect(rows).toHaveLength(11)
    for (const { line } of rows) {
      for (const code of recovery) expect(line).not.toContain(code.replaceAll('-', ''))
      expect(line).not.toContain(secret)
    }
  })

  it('is turned off by an owner for somebody who lost their telephone, and by nobody else', async () => {
    const advisor = await shop.desk('devin')
    await advisor.delete(`/api/people/${marguerite.id}/second-step`).expect(403)
    await advisor.get(`/api/people/${marguerite.id}/second-step`).expect(403)
    await owner.delete(`/api/people/${marguerite.id}/second-step`).expect(204)
    expect(await stateOf(owner)).toEqual({ isOn: false, recoveryCodesLeft: 0 })
    expect(await stateOf(owner, devin.id)).toEqual({ isOn: false, recoveryCodesLeft: 0 })
  })
})
