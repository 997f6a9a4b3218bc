import { withClient } from '@bayledger/db/with-client'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { usualPatience } from '../../apps/api/src/http/patience.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { impatient, listenAgain, sendRaw } from '../support/impatient-app.ts'

/** Clients that are slow, send too much or send nonsense, and a database that has had enough. */
let shop: TestApp
let desk: Caller
beforeAll(async () => {
  shop = await startTestApp()
  desk = await shop.desk('ottoline')
})
afterAll(() => shop.stop())

const halfBody =
  'POST /api/report-checks HTTP/1.1\r\nhost: localhost\r\nsec-fetch-site: same-origin\r\ncontent-type: application/json\r\ncontent-length: 100\r\n\r\n{'

describe('a slow client', () => {
  it('is waited for as long as docs/operations.md says', () => {
    expect(shop.server).toMatchObject({
      headersTimeout: usualPatience.headMs,
      requestTimeout: usualPatience.requestMs,
      timeout: usualPatience.silenceMs,
    })
    expect(usualPatience).toMatchObject({ headMs: 20_000, requestMs: 120_000, silenceMs: 600_000 })
  })

  it('that never finishes its body is told so, and the connection ends', async () => {
    const { port, stop } = await listenAgain(shop, impatient)
    const reply = await sendRaw(port, halfBody).closed
    await stop(0)
    expect(reply).toMatch(/^HTTP\/1\.1 408 /)
    expect(reply).toContain('"code":"REQUEST_TOO_SLOW"')
  })

  it('does not keep the service from stopping: neither half a body nor a stream that nobody reads', async () => {
    const { port, stop } = await listenAgain(shop, usualPatience)
    const cookie = desk.cookies.join('; ')
    const half = sendRaw(port, halfBody)
    const stream = sendRaw(port, `GET /api/live HTTP/1.1\r\nhost: localhost\r\ncookie: ${cookie}\r\n\r\n`)
    await stream.answered
    await stop(100)
    await Promise.all([half.closed, stream.closed])
  })
})

describe('a request that cannot be right', () => {
  it.each([
    ['an address with half a percent sign', '/api/orders/%', 'ADDRESS_UNREADABLE', 400],
    ['NUL in an address', '/api/orders/%00', 'FIELDS_INVALID', 422],
    ['a forged cursor', '/api/customers?cursor=WyJhIiwiYiJd', 'FIELDS_INVALID', 422],
    ['a forged cursor of another list', '/api/floor?cursor=WyJhIiwiYiJd', 'FIELDS_INVALID', 422],
    ['ids that are none', `/api/floor?orders=${'-'.repeat(36)}`, 'FIELDS_INVALID', 422],
    ['a path that leaves', '/api/../../etc/passwd', 'ROUTE_NOT_FOUND', 404],
  ])('%s', async (_what, path, code, status) => {
    const reply = await desk.get(path)
    expect([reply.status, reply.body.code, reply.type]).toEqual([status, code, 'application/problem+json'])
  })

  it('is refused in our words where it is nested 5,000 deep, compressed, or 10 MB long', async () => {
    const post = (headers: Record<string, string>, body: string) =>
      shop.nobody
        .call('post', '/api/report-checks', { 'content-type': 'application/json', ...headers })
        .send(body)
    const deep = await post({}, `{"sha256":${'['.repeat(5_000)}${']'.repeat(5_000)}}`)
    expect([deep.status, deep.body.code]).toEqual([422, 'FIELDS_INVALID'])
    const packed = await post({ 'content-encoding': 'gzip' }, 'not read as gzip')
    expect([packed.status, packed.body.code]).toEqual([400, 'REQUEST_UNREADABLE'])
    const long = await desk.post('/api/customers', { name: 'x'.repeat(10_000_000) })
    expect([long.status, long.body.code]).toEqual([413, 'REQUEST_TOO_LARGE'])
  })
})

describe('a database that has had enough', () => {
  const customer = {
    name: 'A. Name',
    phone: null,
    email: null,
    mayText: false,
    mayEmail: false,
    mayCall: false,
    language: 'en',
  }
  /** Every new customer fails with this code of PostgreSQL, and so does every new table where `tables` says so. */
  const failWith = (code: string, tables: boolean, work: () => Promise<void>) =>
    withClient(shop.adminUrl, async (client) => {
      await client.query(`
        create function fails() returns trigger language plpgsql as
          $$ begin raise exception 'made up' using errcode = '${code}'; end $$;
        create trigger fails before insert on customers execute function fails();
        create function fails_too() returns event_trigger language plpgsql as
          $$ begin raise exception 'made up' using errcode = '${code}'; end $$;
        ${tables ? 'create event trigger fails_too on ddl_command_start execute function fails_too();' : ''}`)
      await work()
      await client.query(
        'drop event trigger if exists fails_too; drop function fails_too; drop function fails cascade',
      )
    })
  const create = () => desk.post('/api/customers', customer, { 'idempotency-key': crypto.randomUUID() })

  it('is no fault of ours where a statement took too long', async () => {
    await failWith('57014', false, async () => {
      const { body } = await create().expect(503)
      expect(body).toMatchObject({ code: 'SERVICE_UNAVAILABLE', retryAfterSeconds: 5 })
      expect(body.detail).toContain('took too long')
      await shop.nobody.get('/readyz').expect(200)
    })
    await create().expect(201)
  })

  it('is not ready while its disk is full, and ready again by itself', async () => {
    await failWith('53100', true, async () => {
      const { body } = await create().expect(503)
      expect(body.detail).toContain('disk of the database is full')
      expect((await shop.nobody.get('/readyz').expect(503)).body.detail).toContain('disk')
      await desk.get('/api/customers').expect(200)
    })
    await shop.nobody.get('/readyz').expect(200)
    await create().expect(201)
  })
})

describe('names and proxies', () => {
  const statusOf = async (lines: readonly string[], trustProxy: readonly string[]) => {
    const { port, stop } = await listenAgain(shop, usualPatience, {
      hosts: ['localhost', 'desk.shop.example', '*.shop.lan'],
      trustProxy,
    })
    const body = JSON.stringify({ name: 'nobody', password: 'nobody at all' })
    const reply = await sendRaw(
      port,
      [
        ...lines,
        'content-type: application/json',
        `content-length: ${body.length}`,
        'connection: close',
        '',
        body,
      ].join('\r\n'),
    ).closed
    await stop(0)
    return Number(reply.split(' ')[1])
  }
  const signIn = 'POST /api/sessions/desk HTTP/1.1'
  const origin = 'origin: https://desk.shop.example'

  it('are ours, or the request is refused before anything is read', async () => {
    expect(await statusOf([signIn, 'host: elsewhere.example', 'sec-fetch-site: same-origin'], [])).toBe(421)
    expect(await statusOf([signIn, 'host: front.shop.lan', 'sec-fetch-site: same-origin'], [])).toBe(401)
    expect(await statusOf(['GET /healthz HTTP/1.1', 'host: 10.0.0.9'], [])).toBe(200)
  })

  it('of a proxy that ends TLS are believed where it is trusted, and only there', async () => {
    const passedOn = ['host: localhost', 'x-forwarded-host: desk.shop.example', 'x-forwarded-proto: https']
    expect(await statusOf([signIn, ...passedOn, origin], ['loopback'])).toBe(401)
    expect(await statusOf([signIn, ...passedOn, origin], [])).toBe(403)
  })
})
