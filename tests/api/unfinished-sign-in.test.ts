import { contract } from '@bayledger/contract/contract'
import { type Awaited, awaited, type Endpoint } from '@bayledger/contract/endpoint'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, cookiesIn, type Method, startTestApp, type TestApp } from '../support/app.ts'
import { codeShown } from '../support/authenticator.ts'

/** Whoever has signed in and still has to do something before the desk opens. */
let shop: TestApp
beforeAll(async () => {
  shop = await startTestApp()
})
afterAll(() => shop.stop())

describe('a session that awaits something', () => {
  it.each(awaited)('opens what is needed for it and nothing else: %s', async (what) => {
    const unfinished = await shop.desk('devin')
    const awaiting = "update sessions set awaits = $2 where staff_id = $1 and kind = 'desk'"
    await shop.deps.pool.query(awaiting, [people.devin.id, what])
    const opened: string[] = []
    for (const endpoint of contract as readonly Endpoint[]) {
      const { access, method, path, operationId } = endpoint
      if (access.who === 'public' || access.who === 'customer-link' || operationId === 'signOut') continue
      const called = path.replace(/:\w+/g, '019bb314-2300-7000-8000-000000000000')
      const call = unfinished.call(method.toLowerCase() as Method, called)
      const reply = await call.send(method === 'GET' ? undefined : {})
      if (reply.body.code !== 'SIGN_IN_UNFINISHED') opened.push(operationId)
      else expect(reply.status).toBe(403)
    }
    const open: Readonly<Record<Awaited, readonly string[]>> = {
      password: ['getSession', 'getOwnRecord', 'setPassword'],
      // What of a person may be read then is their own; these calls name nobody.
      'second-step': [
        'getSession',
        'beginSecondStep',
        'confirmSecondStep',
        'challengeForPasskey',
        'addPasskey',
        'getOwnRecord',
      ],
    }
    expect(opened).toEqual(open[what])
  })
})

describe('a shop that asks everybody at the desk for a second step', () => {
  const { marguerite, ottoline } = people
  const enter = ({ signInName: name, password }: { signInName: string; password: string }, code?: string) =>
    shop.nobody.post('/api/sessions/desk', { name, password, ...(code === undefined ? {} : { code }) })
  const turnOn = async (unfinished: Caller): Promise<string> => {
    const { body } = await unfinished.post('/api/own-second-step').expect(201)
    const code = codeShown(body.secret, shop.clock.now())
    await unfinished.post('/api/own-second-step/confirmation', { code }).expect(200)
    return body.secret
  }

  it('is made by its owner, who is not put out by it', async () => {
    const owner = await shop.desk('marguerite')
    const path = '/api/register/access-rules'
    expect((await owner.get(path).expect(200)).body.record).toMatchObject({
      ...{ version: 0, content: { secondStep: false } },
    })
    await (await shop.desk('ottoline')).get(path).expect(403)
    const rules = { content: { secondStep: true } }
    await owner.put(path, rules, { 'if-match': '"0"' }).expect(200)
    await owner.get('/api/floor').expect(200)
  })

  it('opens nothing to whoever has none until they turn it on, its only owner too', async () => {
    for (const person of [marguerite, ottoline]) {
      const reply = await enter(person).expect(201)
      expect(reply.body.awaits).toBe('second-step')
      const unfinished = shop.withCookies(cookiesIn(reply))
      await unfinished.get('/api/floor').expect(403)
      const secret = await turnOn(unfinished)
      await unfinished.get('/api/floor').expect(200)
      expect((await enter(person).expect(401)).body.code).toBe('SECOND_STEP_NEEDED')
      shop.clock.advance(30_000)
      const next = await enter(person, codeShown(secret, shop.clock.now())).expect(201)
      expect(next.body.awaits).toBeUndefined()
    }
  })

  it('takes no password alone from whoever has a passkey: it would open the way to another step', async () => {
    await shop.deps.pool.query(
      `insert into passkeys (shop_id, id, staff_id, name, credential_id, public_key, sign_count, rp_id, added_at)
       values ($1, $2, $2, 'Key', 'x', 'x', 0, 'localhost', now())`,
      [shop.deps.shopId, people.devin.id],
    )
    const { body } = await enter(people.devin).expect(401)
    expect(body).toMatchObject({
      code: 'SIGN_IN_REFUSED',
      detail: expect.stringMatching(/yours is a passkey/),
    })
  })
})
