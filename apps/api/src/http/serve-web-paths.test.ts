import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fastify, { type FastifyInstance } from 'fastify'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { handleErrors } from './error-handler.ts'
import { serveWeb } from './serve-web.ts'

let app: FastifyInstance
let folder: string
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'bayledger-web-'))
  mkdirSync(join(folder, 'assets'))
  for (const page of ['desk', 'bay', 'customer']) writeFileSync(join(folder, `${page}.html`), `<p>${page}`)
  writeFileSync(join(folder, 'assets', 'desk-1a2b.js'), 'export {}')
  writeFileSync(join(folder, 'assets', 'desk-1a2b.js.br'), 'packed')
  app = fastify()
  handleErrors(
    app,
    () => undefined,
    () => undefined,
  )
  await serveWeb(app, folder)
})
afterAll(async () => {
  await app.close()
  rmSync(folder, { recursive: true, force: true })
})

it('serves the pages and the files that there are', async () => {
  const page = await app.inject('/desk/orders/1')
  expect([page.statusCode, page.body, page.headers['cache-control']]).toEqual([200, '<p>desk', 'no-cache'])
  const script = await app.inject('/assets/desk-1a2b.js')
  expect([script.statusCode, script.headers['cache-control']]).toEqual([
    200,
    'public, max-age=31536000, immutable',
  ])
  const packed = await app.inject({ url: '/assets/desk-1a2b.js', headers: { 'accept-encoding': 'br' } })
  expect([packed.headers['content-encoding'], packed.body]).toEqual(['br', 'packed'])
})

it.each([
  '/%00',
  '//',
  '//api/orders',
  '/assets/',
  '/assets',
  `/assets/${'a'.repeat(5_000)}`,
  '/a/../..//b',
  '/x/%00',
])('answers %s as a problem of ours', async (path) => {
  const reply = await app.inject(path)
  expect([reply.statusCode, reply.json().code]).toEqual([404, 'ROUTE_NOT_FOUND'])
})

it.each([
  ['if-match', '"99999999999999999999"'],
  ['if-unmodified-since', 'Thu, 01 Jan 1970 00:00:00 GMT'],
  ['range', 'bytes=99999999-'],
])(
  'answers a page that is asked for by a %s which it does not fit as a problem of ours',
  async (name, value) => {
    for (const path of ['/desk/orders/1', '/assets/desk-1a2b.js']) {
      const reply = await app.inject({ url: path, headers: { [name]: value } })
      expect([reply.statusCode, reply.json().code], path).toEqual([400, 'REQUEST_UNREADABLE'])
    }
  },
)
