import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'

/** The code on paper with which an owner sets another password. */
let shop: TestApp
let owner: Caller
let code: string
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const { marguerite, devin } = people
const password = 'brindle falls again'
const enter = (typed: Partial<Record<'name' | 'code' | 'password', string>>, address = '192.0.2.1') =>
  shop.inject({
    method: 'POST',
    url: '/api/sessions/desk/owner-code',
    remoteAddress: address,
    headers: { 'sec-fetch-site': 'same-origin' },
    payload: { name: marguerite.signInName, code, password, ...typed },
  })
const codeOf = (reply: { json: () => { code?: string } }) => reply.json().code
const newCode = async () => (await owner.post('/api/own-owner-code').expect(201)).body.code

describe('a printed code of an owner', () => {
  it('is made by an owner who has proven lately that it is them, and lies as a digest only', async () => {
    await (await shop.desk('devin')).post('/api/own-owner-code').expect(403)
    expect((await owner.get('/api/own-owner-code').expect(200)).body).toEqual({ madeAt: null })
    shop.clock.advance(11 * 60_000)
    expect((await owner.post('/api/own-owner-code').expect(403)).body.code).toBe('PROOF_NEEDED')
    owner = await shop.desk('marguerite')
    code = await newCode()
    // 28 signs of 32 kinds: 140 bits.
    expect(code).toMatch(/^([2-9A-HJ-NP-Z]{4}-){6}[2-9A-HJ-NP-Z]{4}$/)
    const madeAt = shop.clock.now().toISOString()
    expect((await owner.get('/api/own-owner-code').expect(200)).body).toEqual({ madeAt })
    const { rows } = await shop.deps.pool.query('select c::text as line from owner_codes c')
    expect(rows).toHaveLength(1)
    expect(rows[0].line).not.toContain(code.replaceAll('-', ''))
  })

  it('ends when another one is made', async () => {
    const before = code
    code = await newCode()
    expect(codeOf(await enter({ code: before }))).toBe('OWNER_CODE_REFUSED')
  })

  it('is not used up by a password that is not taken', async () => {
    expect(codeOf(await enter({ password: 'short' }))).toBe('PASSWORD_UNSUITABLE')
    expect(codeOf(await enter({ password: marguerite.password }))).toBe('PASSWORD_UNSUITABLE')
  })

  it('reads the same whether the name, the code or the person’s role is wrong', async () => {
    const { shopId } = shop.deps
    await shop.deps.pool.query(
      `insert into owner_codes (shop_id, staff_id, code_hash, made_at)
       select shop_id, $2, code_hash, made_at from owner_codes where shop_id = $1`,
      [shopId, devin.id],
    )
    const replies = await Promise.all([
      enter({ name: 'nobody' }, '192.0.2.2'),
      enter({ code: 'ABCD' }, '192.0.2.2'),
      enter({ name: devin.signInName }, '192.0.2.2'),
    ])
    const [first, ...others] = replies.map((reply) => {
      const { requestId: _, ...said } = reply.json()
      return said
    })
    expect(first.code).toBe('OWNER_CODE_REFUSED')
    expect(others).toEqual([first, first])
  })

  it('sets the password once, however it is typed, and ends what there was before', async () => {
    await shop.deps.pool.query(
      "insert into second_steps (shop_id, staff_id, secret_box, begun_at, confirmed_at) values ($1, $2, 'x', now(), now())",
      [shop.deps.shopId, marguerite.id],
    )
    const typed = { code: code.toLowerCase().replaceAll('-', ' ') }
    const replies = await Promise.all([enter(typed), enter(typed)])
    expect(replies.map(({ statusCode }) => statusCode).toSorted()).toEqual([204, 422])
    await owner.get('/api/floor').expect(401)
    const { signInName: name } = marguerite
    await shop.nobody.post('/api/sessions/desk', { name, password: marguerite.password }).expect(401)
    await shop.nobody.post('/api/sessions/desk', { name, password }).expect(201)
    const { rows } = await shop.deps.pool.query(
      `select kind, staff_id, address from security_events where kind like 'owner-code-%' and kind <> 'owner-code-failed'
       order by recorded_at, id`,
    )
    expect(rows.map(({ kind }) => kind)).toEqual(['owner-code-made', 'owner-code-made', 'owner-code-used'])
    expect(rows.at(-1)).toEqual({ kind: 'owner-code-used', staff_id: marguerite.id, address: '192.0.2.1' })
  })

  it('is guessed at no more often than a password: the tries are the same ones', async () => {
    const seen: (string | undefined)[] = []
    for (let tries = 0; tries < 5; tries += 1) seen.push(codeOf(await enter({ code: 'ABCD' }, '192.0.2.3')))
    expect(seen).toEqual(Array(5).fill('OWNER_CODE_REFUSED'))
    expect(codeOf(await enter({ code: 'ABCD' }, '192.0.2.3'))).toBe('SIGN_IN_BLOCKED')
    const blocked = await shop.nobody.post('/api/sessions/desk', { name: marguerite.signInName, password })
    expect(blocked.body.code).toBe('SIGN_IN_BLOCKED')
  })
})
