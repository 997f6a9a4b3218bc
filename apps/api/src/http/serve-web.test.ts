import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fastify, { type FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { serveWeb } from './serve-web.ts'

const around = mkdtempSync(join(tmpdir(), 'served-'))
const folder = join(around, 'dist')
let app: FastifyInstance
beforeAll(async () => {
  for (const one of ['assets', '.git']) mkdirSync(join(folder, one), { recursive: true })
  for (const page of ['desk', 'bay', 'customer'])
    writeFileSync(join(folder, `${page}.html`), '<title>a</title>')
  writeFileSync(join(folder, 'assets/a-1.js'), 'console.log(1)')
  writeFileSync(join(folder, 'assets/a-1.css'), 'a { color: red }')
  for (const hidden of ['dist/.git/config', 'dist/.env', 'private-key.pem'])
    writeFileSync(join(around, hidden), 'secret')
  app = fastify()
  await serveWeb(app, folder)
})
afterAll(async () => {
  await app.close()
  rmSync(around, { recursive: true })
})

describe('what is served of the faces', () => {
  it('is pages, scripts and styles, each with its type and character encoding', async () => {
    const types = { '/desk': 'html', '/assets/a-1.js': 'javascript', '/assets/a-1.css': 'css' }
    for (const [url, type] of Object.entries(types)) {
      const { statusCode, headers } = await app.inject(url)
      expect(statusCode, url).toBe(200)
      expect(headers['content-type']).toMatch(new RegExp(`^\\w+/${type}; charset=utf-8$`, 'i'))
    }
  })

  it.each([
    '/assets',
    '/assets/',
    '/.git/config',
    '/.git/',
    '/.env',
    '/../private-key.pem',
    '/..%2fprivate-key.pem',
    '/assets/..%2f..%2fprivate-key.pem',
    '/assets/%2e%2e/%2e%2e/private-key.pem',
    '/assets\\..\\..\\private-key.pem',
  ])('is not %s: no list of a folder, no hidden file, nothing outside', async (url) => {
    const { statusCode, payload } = await app.inject(url)
    expect(statusCode).toBeGreaterThanOrEqual(400)
    expect(payload).not.toMatch(/secret|a-1/)
  })

  it('is sent on to nowhere but our own desk', async () => {
    for (const url of ['/', '/?next=https://elsewhere.example', '//elsewhere.example/desk']) {
      const { statusCode, headers } = await app.inject({ url, headers: { host: 'desk.shop.lan' } })
      if (statusCode < 400) expect(headers.location).toBe('/desk')
    }
  })
})
