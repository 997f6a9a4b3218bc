import { contract } from '@bayledger/contract/contract'
import { type Awaited, awaited, type Endpoint } from '@bayledger/contract/endpoint'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Method, startTestApp, type TestApp } from '../support/app.ts'

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
      'second-step': ['getSession', 'getOwnRecord'],
    }
    expect(opened).toEqual(open[what])
  })
})
