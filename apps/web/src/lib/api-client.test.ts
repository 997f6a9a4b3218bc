import { createServer, type IncomingMessage } from 'node:http'
import type { AddressInfo } from 'node:net'
import { endpoint } from '@bayledger/contract/endpoint'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import * as z from 'zod/mini'
import { call, patienceMilliseconds } from './api-client.ts'
import { isCallProblem } from './problem.ts'
import { askForProofBy } from './proof.ts'

// The client names paths only; a page's own address completes them. Here a real server stands in for the page's.
let origin = ''
const seen: { method: string; url: string; headers: IncomingMessage['headers']; body: string }[] = []
const server = createServer(async (request, response) => {
  let body = ''
  for await (const piece of request) body += String(piece)
  seen.push({ method: request.method ?? '', url: request.url ?? '', headers: request.headers, body })
  if (request.url?.startsWith('/api/stale')) {
    response.writeHead(412, { 'content-type': 'application/problem+json' })
    response.end(
      JSON.stringify({
        type: 'about:blank',
        title: 'Someone saved this in the meantime',
        status: 412,
        code: 'VERSION_STALE',
        detail: 'Read it again.',
        requestId: 'r1',
      }),
    )
  } else if (request.url?.startsWith('/api/guarded') && !isProven) {
    response.writeHead(403, { 'content-type': 'application/problem+json' })
    response.end(
      JSON.stringify({ title: 'Prove again', status: 403, code: 'PROOF_NEEDED', detail: 'Type it again.' }),
    )
  } else if (request.url?.startsWith('/api/foreign')) {
    response.writeHead(502, { 'content-type': 'text/html' }).end('<h1>Bad gateway</h1>')
  } else if (request.url?.startsWith('/api/portal')) {
    response.writeHead(200, { 'content-type': 'text/html' }).end('<h1>Accept the terms</h1>')
  } else if (request.url?.startsWith('/api/torn')) {
    response.writeHead(200, { 'content-type': 'application/json' }).write('{"says":')
    response.destroy()
  } else if (request.url?.startsWith('/api/silent')) {
    heardSilent?.()
  } else if (request.url?.startsWith('/api/empty')) {
    response.writeHead(204).end()
  } else {
    response.writeHead(200, { 'content-type': 'application/json' }).end('{"says":"heard","since":"later"}')
  }
})
let isProven = false
let heardSilent: (() => void) | null = null
const pageFetch = globalThis.fetch

beforeAll(async () => {
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready))
  origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
  globalThis.fetch = (address, init) => pageFetch(`${origin}${String(address)}`, init)
})
afterAll(() => {
  globalThis.fetch = pageFetch
  server.close()
})

const declared = { summary: 'A route of this test.', access: { who: 'public' }, problems: [] } as const
const change = endpoint({
  ...declared,
  operationId: 'change',
  method: 'PUT',
  path: '/api/things/:thingId',
  params: z.strictObject({ thingId: z.string() }),
  query: z.strictObject({ part: z.string() }),
  body: z.strictObject({ psi: z.number() }),
  once: true,
  ifMatch: true,
  replies: { 200: z.strictObject({ says: z.string() }) },
})
const bare = (path: `/${string}`) =>
  endpoint({
    ...declared,
    operationId: 'bare',
    method: 'GET',
    path,
    replies: { 200: z.strictObject({}), 204: null },
  })

describe('calling an endpoint', () => {
  it('fills the address and sends body, key and version as declared', async () => {
    const reply = await call(change, {
      params: { thingId: 'a/b' },
      query: { part: 'x y' },
      body: { psi: 34.5 },
      idempotencyKey: 'k1',
      version: 7,
    })
    expect(reply.says).toBe('heard')
    const last = seen.at(-1)
    expect([last?.method, last?.url, last?.body]).toEqual([
      'PUT',
      '/api/things/a%2Fb?part=x+y',
      '{"psi":34.5}',
    ])
    expect(last?.headers).toMatchObject({
      'content-type': 'application/json',
      'idempotency-key': 'k1',
      'if-match': '"7"',
    })
  })

  it('gives nothing for an empty reply', async () => {
    expect(await call(bare('/api/empty'), {})).toBeUndefined()
  })

  it('throws the problem that the server answered with', async () => {
    const thrown = await call(bare('/api/stale'), {}).catch((problem: unknown) => problem)
    expect(isCallProblem(thrown, 'VERSION_STALE')).toBe(true)
    expect(isCallProblem(thrown, 'VIN_TAKEN')).toBe(false)
  })

  it('says so when something else than the server answered', async () => {
    const thrown = await call(bare('/api/foreign'), {}).catch((problem: unknown) => problem)
    expect(isCallProblem(thrown, 'REPLY_UNREADABLE')).toBe(true)
  })

  it('says so when nothing answered', async () => {
    const own = origin
    // Port 1 is never listened on (IANA: tcpmux, unused).
    origin = 'http://127.0.0.1:1'
    const thrown = await call(bare('/api/empty'), {}).catch((problem: unknown) => problem)
    origin = own
    expect(isCallProblem(thrown, 'UNREACHABLE')).toBe(true)
  })

  it.each(['/api/portal', '/api/torn'] as const)('says so when the answer is none: %s', async (path) => {
    const thrown = await call(bare(path), {}).catch((problem: unknown) => problem)
    expect(isCallProblem(thrown, 'UNREACHABLE')).toBe(true)
  })

  it('gives up a connection that stays open and brings nothing', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
    try {
      const heard = new Promise<void>((resolve) => {
        heardSilent = resolve
      })
      const outcome = call(bare('/api/silent'), {}).catch((problem: unknown) => problem)
      await heard
      vi.advanceTimersByTime(patienceMilliseconds)
      expect(isCallProblem(await outcome, 'UNREACHABLE')).toBe(true)
    } finally {
      vi.useRealTimers()
    }
  })

  it('leaves a call that its own caller ended to that caller', async () => {
    const stop = new AbortController()
    const heard = new Promise<void>((resolve) => {
      heardSilent = resolve
    })
    const outcome = call(bare('/api/silent'), { signal: stop.signal }).catch((problem: unknown) => problem)
    await heard
    stop.abort()
    expect(isCallProblem(await outcome)).toBe(false)
  })

  it('asks for a proof where one is needed, and sends the same again, key and all', async () => {
    const guarded = endpoint({ ...change, operationId: 'guarded', path: '/api/guarded/:thingId' })
    const given = {
      params: { thingId: 'g' },
      query: { part: 'x' },
      body: { psi: 34.5 },
      version: 3,
      idempotencyKey: 'one-act',
    }
    askForProofBy(async () => false)
    await expect(call(guarded, given)).rejects.toSatisfy((thrown) => isCallProblem(thrown, 'PROOF_NEEDED'))
    const before = seen.length
    askForProofBy(async () => {
      isProven = true
      return true
    })
    await call(guarded, given)
    const [first, second, ...more] = seen.slice(before)
    expect(more).toEqual([])
    expect(second?.body).toBe('{"psi":34.5}')
    expect(second?.headers['idempotency-key']).toBe(first?.headers['idempotency-key'])
  })
})
