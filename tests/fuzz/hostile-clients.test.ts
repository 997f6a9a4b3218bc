import { once } from 'node:events'
import { connect } from 'node:net'
import {
  brotliCompressSync,
  brotliDecompressSync,
  constants,
  deflateRawSync,
  gunzipSync,
  gzipSync,
  inflateSync,
} from 'node:zlib'
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

  it('is refused in our words where it is nested 5,000 deep, or names 50,000 fields that there are not', async () => {
    const json = { 'content-type': 'application/json' }
    const deep = `{"sha256":${'['.repeat(5_000)}${']'.repeat(5_000)}}`
    const fields = JSON.stringify(
      Object.fromEntries(Array.from({ length: 50_000 }, (_, key) => [`f${key}`, 1])),
    )
    for (const body of [deep, fields]) {
      const reply = await shop.nobody.call('post', '/api/report-checks', json).send(body)
      expect([reply.status, reply.body.code]).toEqual([422, 'FIELDS_INVALID'])
      expect(reply.text.length).toBeLessThan(20_000)
    }
  })
})

describe('a body that is too much', () => {
  const mebibyte = 1024 * 1024
  /** 256 MB of zeros, packed by a thousand: of each kind one that the limit of 1 MB lets through. */
  const part = Buffer.alloc(4 * mebibyte)
  const sixtyFour = (bytes: Buffer): Buffer => Buffer.concat(Array.from({ length: 64 }, () => bytes))
  const bombs: readonly (readonly [
    string,
    Buffer,
    (bytes: Buffer, most: { maxOutputLength: number }) => Buffer,
  ])[] = [
    ['gzip', sixtyFour(gzipSync(part)), gunzipSync],
    [
      'deflate',
      Buffer.concat([
        Buffer.from([0x78, 0x9c]),
        sixtyFour(deflateRawSync(part, { finishFlush: constants.Z_FULL_FLUSH })),
      ]),
      inflateSync,
    ],
    [
      'br',
      brotliCompressSync(Buffer.alloc(256 * mebibyte), { params: { [constants.BROTLI_PARAM_QUALITY]: 1 } }),
      brotliDecompressSync,
    ],
  ]

  it('is not unpacked, whatever it would unpack to', async () => {
    for (const [coding, bytes, unpack] of bombs) {
      expect(bytes.length, coding).toBeLessThan(mebibyte / 2)
      expect(() => unpack(bytes, { maxOutputLength: 8 * mebibyte }), coding).toThrow(/larger than/)
    }
    const before = process.resourceUsage().maxRSS
    const types = [
      ['/api/customers', 'application/json'],
      ['/api/report-checks', 'application/pdf'],
      ['/api/stock/import/preview', 'application/octet-stream'],
      ['/api/sealed-photos', 'application/json'],
    ] as const
    const replies = await Promise.all(
      bombs.flatMap(([coding, bytes]) =>
        types.map(([path, type]) =>
          desk.call('post', path, { 'content-type': type, 'content-encoding': coding }).send(bytes),
        ),
      ),
    )
    for (const { status, body } of replies) expect([status, body.code]).toEqual([415, 'REQUEST_COMPRESSED'])
    // All of them unpacked would be 3 GB.
    expect((process.resourceUsage().maxRSS - before) / 1024).toBeLessThan(256)
    const plain = { 'content-encoding': 'identity', 'content-type': 'application/json' }
    const { body } = await shop.nobody
      .call('post', '/api/report-checks', plain)
      .send({ sha256: '0'.repeat(64) })
    expect(body.code).toBeUndefined()
  })

  /** What a client reads that sends 10 MB to the end, whatever comes back meanwhile, and whether all of it went out. */
  const sendAll = async (head: string, body: Buffer): Promise<{ reply: string; broken: string | null }> => {
    const { port, stop } = await listenAgain(shop, usualPatience)
    const socket = connect(port, '127.0.0.1')
    let reply = ''
    let broken: string | null = null
    socket.setEncoding('utf8').on('data', (text) => {
      reply += text
    })
    socket.on('error', (error) => {
      broken = error.message
    })
    const closed = once(socket, 'close')
    socket.write(head)
    await new Promise((done) => socket.write(body, done))
    socket.end()
    await closed
    await stop(0)
    return { reply, broken }
  }
  const head = `POST /api/customers HTTP/1.1\r\nhost: localhost\r\nsec-fetch-site: same-origin\r\ncontent-type: application/json\r\n`
  const long = Buffer.alloc(10 * mebibyte, 'x')

  it.each([
    ['of 10 MB', `${head}content-length: ${long.length}\r\n\r\n`, long, 413, 'REQUEST_TOO_LARGE'],
    [
      'of 10 MB in chunks',
      `${head}transfer-encoding: chunked\r\n\r\n`,
      Buffer.concat([Buffer.from(`${long.length.toString(16)}\r\n`), long, Buffer.from('\r\n0\r\n\r\n')]),
      413,
      'REQUEST_TOO_LARGE',
    ],
    [
      'of 10 MB behind a head of 20 KB',
      `${head}x-long: ${'h'.repeat(20_000)}\r\ncontent-length: ${long.length}\r\n\r\n`,
      long,
      431,
      'HEADERS_TOO_LARGE',
    ],
  ])(
    '%s is answered in our words, and the answer is not overtaken by a reset',
    async (_what, sent, body, status, code) => {
      const { reply, broken } = await sendAll(sent, body)
      expect(broken).toBeNull()
      expect(reply).toMatch(new RegExp(`^HTTP/1\\.1 ${status} `))
      expect(reply).toContain(`"code":"${code}"`)
      expect(reply.match(/HTTP\/1\.1/g)).toHaveLength(1)
    },
  )
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

  it('of the caller’s address are believed where the proxy is trusted, and only there', async () => {
    const addressAfter = async (trustProxy: readonly string[]) => {
      const passedOn = ['host: localhost', 'x-forwarded-for: 198.51.100.7', 'sec-fetch-site: same-origin']
      expect(await statusOf([signIn, ...passedOn], trustProxy)).toBe(401)
      const { rows } = await shop.deps.pool.query(
        "select address from security_events where kind = 'sign-in-failed' order by recorded_at desc, id desc limit 1",
      )
      return rows[0].address
    }
    expect(await addressAfter(['loopback'])).toBe('198.51.100.7')
    expect(await addressAfter([])).toMatch(/^(::ffff:)?127\.0\.0\.1$|^::1$/)
  })
})
