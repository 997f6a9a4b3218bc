import { contract } from '@bayledger/contract/contract'
import { addressOf, type Endpoint } from '@bayledger/contract/endpoint'
import { withClient } from '@bayledger/db/with-client'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { usualPatience } from '../../apps/api/src/http/patience.ts'
import { openLog } from '../../apps/api/src/observe/open-log.ts'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { listenAgain } from '../support/impatient-app.ts'

/** The log of a service that logs all that it ever logs, while canaries are put into whatever a request can hold. */
let shop: TestApp
let owner: Caller
let service: Awaited<ReturnType<typeof listenAgain>>
let log = ''
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
  const to = {
    write: (line: string) => {
      log += line
    },
  }
  service = await listenAgain(shop, usualPatience, { logger: openLog('trace', to) })
})
afterAll(async () => {
  await service.stop(0)
  await shop.stop()
})

const canary = 'canary-7d3f'
const [pin, phone, plate, color] = ['730164', '+15550173991', 'CNRY73', 'yellow as a canary']
const secrets = [canary, pin, phone, plate, color, people.marguerite.password, people.marguerite.pin]

type Sent = { readonly cookie?: string; readonly body?: string; readonly key?: string }

const send = (method: string, path: string, { cookie, body, key }: Sent = {}) =>
  fetch(`http://127.0.0.1:${service.port}${path}`, {
    method,
    redirect: 'manual',
    headers: {
      'sec-fetch-site': 'same-origin',
      cookie: cookie ?? owner.cookies.join('; '),
      'user-agent': canary,
      authorization: `Bearer ${canary}`,
      'idempotency-key': key ?? crypto.randomUUID(),
      'if-match': '"1"',
      ...(body === undefined ? {} : { 'content-type': 'application/json' }),
    },
    ...(body === undefined ? {} : { body }),
  })
const post = (path: string, body: object, cookie?: string) =>
  send('POST', path, { body: JSON.stringify(body), ...(cookie === undefined ? {} : { cookie }) })

const customer = {
  ...{ name: `A. ${canary}`, phone, email: `${canary}@shop.example` },
  ...{ mayText: false, mayEmail: false, mayCall: false, language: 'en' },
}
/** A vehicle of nobody. */
const vehicle = {
  ...{ customerId: crypto.randomUUID(), plate, plateRegion: null, vin: null, description: canary },
  ...{ color, notes: canary, sheetId: null },
}

const lines = (): Record<string, unknown>[] =>
  log
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line))

describe('the log', () => {
  it('has each request, and nothing that somebody typed, whichever route takes or refuses it', async () => {
    const statuses = new Set<number>()
    for (const { method, path, operationId } of contract as readonly Endpoint[]) {
      if (path === '/api/live' || operationId === 'signOut') continue
      const params = Object.fromEntries([...path.matchAll(/:(\w+)/g)].map(([, name]) => [name, canary]))
      const query = { q: canary, cursor: canary, [canary]: canary }
      const body =
        method === 'GET' || method === 'DELETE' ? {} : { body: JSON.stringify({ [canary]: canary }) }
      const reply = await send(method, addressOf(path, params, query), body)
      await reply.arrayBuffer()
      statuses.add(reply.status)
    }
    expect([...statuses]).toEqual(expect.arrayContaining([200, 422]))
    const routes = new Set(lines().map(({ route }) => route))
    expect(routes.size).toBeGreaterThan(100)
    for (const secret of secrets) expect(log).not.toContain(secret)
  })

  it('has nothing of what is taken and of what cannot be read', async () => {
    const { signInName, password, id } = people.marguerite
    const statuses = [
      await post('/api/customers', customer),
      await post('/api/vehicles', vehicle),
      await send('GET', `/api/search?q=${canary}`),
      await send('GET', `/api/customers?q=${encodeURIComponent(phone)}`),
      await post('/api/sessions/desk', { name: signInName, password }, ''),
      await post('/api/sessions/desk', { name: canary, password: canary }, ''),
      await send('PUT', `/api/people/${id}/pin`, {
        body: JSON.stringify({ pin, present: people.marguerite.pin }),
      }),
      await post('/api/customer/session', { secret: canary }, ''),
      await send('PUT', `/api/write-up-drafts/${crypto.randomUUID()}`, {
        body: JSON.stringify({ body: { form: { name: canary } } }),
      }),
      await send('POST', '/api/customers', { body: `{"name":"${canary}",` }),
      await send('GET', `/api/unsubscribe/${canary}/${canary}`),
      await send('GET', `/${canary}`),
      await send('GET', '/api/floor', { cookie: `bayledger-desk=${canary}` }),
    ].map(({ status }) => status)
    expect(statuses).toEqual([201, 404, 200, 200, 201, 401, 200, 401, 204, 400, 404, 404, 401])
    expect(lines().filter(({ msg }) => msg === 'answered').length).toBeGreaterThan(statuses.length)
    for (const secret of secrets) expect(log).not.toContain(secret)
  })

  it('has a fault with its place in the program and without the row that the database quotes', async () => {
    const tables = ['customers', 'write_up_drafts']
    const before = log.length
    await withClient(shop.adminUrl, async (client) => {
      await client.query(`create function quotes() returns trigger language plpgsql as $$ begin
        raise exception 'no place for %', new using errcode = 'XX001', detail = 'Failing row contains ' || new::text; end $$`)
      for (const table of tables)
        await client.query(
          `create trigger quotes before insert on ${table} for each row execute function quotes()`,
        )
      expect((await post('/api/customers', customer)).status).toBe(500)
      const draft = { body: JSON.stringify({ body: { form: { name: canary } } }) }
      expect((await send('PUT', `/api/write-up-drafts/${crypto.randomUUID()}`, draft)).status).toBe(500)
      await client.query('drop function quotes cascade')
    })
    const failed = log
      .slice(before)
      .split('\n')
      .filter((line) => line.includes('"msg":"failed"'))
    expect(failed).toHaveLength(2)
    for (const line of failed) expect(line).toMatch(/apps\/api\/src\/features\/.+\.ts:\d+/)
    for (const secret of secrets) expect(log).not.toContain(secret)
  })
})
