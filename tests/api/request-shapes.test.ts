import { contract } from '@bayledger/contract/contract'
import type { Endpoint } from '@bayledger/contract/endpoint'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import * as z from 'zod'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('ottoline')
})
afterAll(() => shop.stop())

const json = { 'content-type': 'application/json' }
const customer = '"name":"Dorothea Quill","kind":"person","phone":"+1 585 555 0142"'

describe('a request that tries to slip something in', () => {
  it.each(['__proto__', 'constructor'])(
    'is refused where it names %s, and changes no object of ours',
    async (key) => {
      for (const [path, body] of [
        ['/api/customers', `{${customer},"${key}":{"prototype":{"isOwner":true},"isOwner":true}}`],
        ['/api/entries', `{"entries":[],"sides":[],"${key}":{"prototype":{"isOwner":true},"isOwner":true}}`],
      ] as const) {
        const reply = await owner
          .call('post', path, { ...json, 'idempotency-key': shop.demo.shop.id })
          .send(body)
        expect([400, 422], `${path} ${reply.text}`).toContain(reply.status)
      }
      expect(({} as { isOwner?: boolean }).isOwner).toBeUndefined()
    },
  )

  it('is refused where a parameter comes twice, or one that there is not', async () => {
    for (const query of ['q=TMB&q=QUI', 'q[]=TMB', 'q=TMB&role=owner'])
      expect((await owner.get(`/api/search?${query}`).expect(422)).body.code).toBe('FIELDS_INVALID')
    await owner.get('/api/search?q=TMB').expect(200)
  })

  it('gets no echo by TRACE, no answer by another method, and none is put in the place of ours', async () => {
    for (const method of ['TRACE', 'PATCH', 'OPTIONS'] as const) {
      const reply = await shop.inject({
        method: method as 'PATCH',
        url: '/api/floor',
        headers: { cookie: owner.cookies.join('; '), 'x-canary': 'canary' },
      })
      expect(reply.statusCode, method).toBe(404)
      expect(reply.payload).not.toContain('canary')
      expect(reply.headers['access-control-allow-methods']).toBeUndefined()
    }
    const asDelete = { 'x-http-method-override': 'DELETE', 'x-method-override': 'DELETE' }
    await owner.call('get', '/api/sessions/current', asDelete).expect(200)
    await owner.get('/api/sessions/current').expect(200)
  })
})

describe('a reply of text', () => {
  it('says how its signs are encoded', async () => {
    const day = 'from=2026-01-12&to=2026-01-12'
    for (const [path, type] of [
      ['/api/floor', 'application/json'],
      [`/api/exports/orders.csv?${day}`, 'text/csv'],
      [`/api/unsubscribe/${'a'.repeat(43)}`, 'text/html'],
      ['/api/nowhere', 'application/problem+json'],
    ] as const)
      expect((await owner.get(path)).headers['content-type'], path).toBe(`${type}; charset=utf-8`)
  })
})

describe('what happens at the doors', () => {
  it('is kept with who, when and from where, and holds no secret', async () => {
    const { signInName, password } = people.ottoline
    await shop.nobody.post('/api/sessions/desk', { name: signInName, password: 'a-wrong-canary' }).expect(401)
    const desk = await shop.desk('ottoline')
    await desk.delete('/api/sessions/current').expect(204)
    const { rows } = await shop.parts.pool.query('select * from security_events order by at, id')
    for (const kind of ['sign-in-failed', 'signed-in', 'signed-out'])
      expect(rows, kind).toContainEqual(expect.objectContaining({ kind, at: expect.anything() }))
    const failed = rows.find(({ kind }) => kind === 'sign-in-failed')
    expect(failed).toMatchObject({
      about_id: people.ottoline.id,
      address: expect.stringMatching(/127\.0\.0\.1/),
    })
    const kept = JSON.stringify(rows)
    for (const secret of ['a-wrong-canary', password, desk.cookies[0]?.split('=')[1] ?? ''])
      expect(kept).not.toContain(secret)
  })
})

/** Each object within a schema that takes fields that it does not name. */
const openObjects = (schema: unknown, path: string): string[] => {
  if (typeof schema !== 'object' || schema === null) return []
  const { type, properties, additionalProperties } = schema as Record<string, unknown>
  const isOpen = type === 'object' && properties !== undefined && additionalProperties !== false
  return [
    ...(isOpen ? [path] : []),
    ...Object.entries(schema).flatMap(([key, value]) => openObjects(value, `${path}.${key}`)),
  ]
}

const endpoints: readonly Endpoint[] = contract

describe('the contract', () => {
  it('takes no field that it does not name: not in an address, a query or a body', () => {
    const open = endpoints.flatMap(({ operationId, params, query, body }) =>
      Object.entries({ params, query, body }).flatMap(([part, schema]) =>
        schema === undefined
          ? []
          : openObjects(
              z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }),
              `${operationId}.${part}`,
            ),
      ),
    )
    expect(open).toEqual([])
    expect(openObjects(z.toJSONSchema(z.looseObject({ a: z.string() })), 'planted')).toEqual(['planted'])
  })
})

describe('reading', () => {
  it('writes nothing, whatever is read', async () => {
    const counts = async () => {
      const { rows } = await shop.parts.pool.query<{ name: string; rows: string }>(
        `select relname as name, (xpath('/row/c/text()', query_to_xml(format('select count(*) as c from %I', relname), false, true, '')))[1]::text as rows
           from pg_class where relkind = 'r' and relnamespace = 'public'::regnamespace order by 1`,
      )
      return rows
    }
    const before = await counts()
    expect(before.length).toBeGreaterThan(30)
    const reads = contract.filter(({ method, operationId }) => method === 'GET' && operationId !== 'live')
    for (const { path } of reads)
      await owner.get(path.replace(/:\w+/g, '019bb314-2300-7000-8000-000000000000'))
    expect(reads.length).toBeGreaterThan(40)
    expect(await counts()).toEqual(before)
  })
})
