import cookie from '@fastify/cookie'
import fastify, { type FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type CookieName, writeCookie } from './cookies.ts'
import { handleErrors } from './error-handler.ts'
import { setSecurityHeaders } from './security-headers.ts'

const cookies: readonly CookieName[] = ['desk', 'bay', 'device', 'customer', 'browser']

const service = async (tls: boolean): Promise<FastifyInstance> => {
  const app = fastify()
  handleErrors(
    app,
    () => undefined,
    () => undefined,
  )
  setSecurityHeaders(app, tls)
  await app.register(cookie)
  app.get('/fails', () => {
    throw new Error('select secret from vault')
  })
  app.get('/cookies', async (_request, reply) => {
    for (const name of cookies) writeCookie(reply, { name, token: 'abc', seconds: 60 }, tls)
    return {}
  })
  return app
}

let withTls: FastifyInstance
let onThisMachine: FastifyInstance
beforeAll(async () => {
  withTls = await service(true)
  onThisMachine = await service(false)
})
afterAll(() => Promise.all([withTls.close(), onThisMachine.close()]))

describe('every reply with TLS, one that is refused or fails too', () => {
  it.each(['/cookies', '/fails', '/nowhere'])('%s says how a browser is to treat it', async (url) => {
    const { headers } = await withTls.inject(url)
    const [, seconds] =
      /^max-age=(\d+); includeSubDomains$/.exec(String(headers['strict-transport-security'])) ?? []
    // OWASP ASVS 5.0, V3.4.1: a year at least, subdomains too.
    expect(Number(seconds)).toBeGreaterThanOrEqual(365 * 24 * 3600)
    const policy = String(headers['content-security-policy']).split('; ')
    expect(policy).toEqual(
      expect.arrayContaining([
        "default-src 'self'",
        "script-src 'self'",
        "object-src 'none'",
        "base-uri 'none'",
        "frame-ancestors 'none'",
      ]),
    )
    expect(headers).toMatchObject({
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-resource-policy': 'same-origin',
    })
    expect(headers['access-control-allow-origin']).toBeUndefined()
  })

  it('tells nothing of what failed', async () => {
    const { payload, statusCode } = await withTls.inject('/fails')
    expect(statusCode).toBe(500)
    expect(payload).not.toMatch(/select|vault|\.ts/)
  })
})

describe('a cookie', () => {
  it('is of this host alone, over TLS alone, and out of reach of scripts', async () => {
    const set = [(await withTls.inject('/cookies')).headers['set-cookie']].flat()
    expect(set).toHaveLength(cookies.length)
    for (const one of set) {
      expect(one).toMatch(/^__Host-bayledger-\w+=abc; /)
      expect(one).toMatch(/; Path=\/(?:;|$)/)
      expect(one).toMatch(/; Secure(?:;|$)/)
      expect(one).toMatch(/; HttpOnly(?:;|$)/)
      expect(one).not.toMatch(/Domain=/)
      expect(one).toContain(`SameSite=${one?.includes('-customer=') ? 'Lax' : 'Strict'}`)
    }
  })

  it('without TLS, on this machine alone, lacks only what needs it', async () => {
    const set = [(await onThisMachine.inject('/cookies')).headers['set-cookie']].flat()
    for (const one of set) expect(one).toMatch(/^bayledger-\w+=abc; .*HttpOnly; SameSite=/)
  })
})
