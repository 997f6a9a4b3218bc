import { once } from 'node:events'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { advisoryLines } from '../../apps/api/src/commands/advisories/advisory-lines.ts'
import { askRegistry } from '../../apps/api/src/commands/advisories/ask-registry.ts'

/** A folder that locks one package, and a registry on this machine that npm asks about it. */
let folder: string
let registry: Server
let answer: { readonly status: number; readonly body: object }
const asked: string[] = []
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'bayledger-advisories-'))
  const own = { name: 'locks-one', version: '1.0.0', dependencies: { 'leaky-valve': '1.2.3' } }
  writeFileSync(join(folder, 'package.json'), JSON.stringify(own))
  const packages = { '': own, 'node_modules/leaky-valve': { version: '1.2.3' } }
  writeFileSync(
    join(folder, 'package-lock.json'),
    JSON.stringify({ name: own.name, version: own.version, lockfileVersion: 3, requires: true, packages }),
  )
  registry = createServer((request, response) => {
    asked.push(`${request.method} ${request.url}`)
    request.resume().on('end', () => {
      const { status, body } = request.url?.includes('advisories') ? answer : { status: 404, body: {} }
      response.writeHead(status, { 'content-type': 'application/json' }).end(JSON.stringify(body))
    })
  })
  registry.listen(0, '127.0.0.1')
  await once(registry, 'listening')
})
afterAll(() => {
  registry.close()
  rmSync(folder, { recursive: true, force: true })
})

const address = () => `http://127.0.0.1:${(registry.address() as AddressInfo).port}/`
const told = async (page: string) => advisoryLines(await askRegistry(folder, address()), page)

/** As the bulk endpoint of npm's registry answers: by package, a list of advisories. */
const one = {
  'leaky-valve': [
    {
      id: 1,
      url: 'https://advisories.example/GHSA-0000-0000-0001',
      title: 'It leaks',
      severity: 'high',
      vulnerable_versions: '<=1.2.3',
      cwe: [],
      cvss: { score: 7, vectorString: null },
    },
  ],
}

it('says that none is known where the registry knows of none', async () => {
  answer = { status: 200, body: {} }
  expect(await told('')).toEqual({ status: 0, lines: ['packages 1, advisories 0, without an answer 0'] })
  expect(asked).toContain('POST /-/npm/v1/security/advisories/bulk')
})

it('names one with its address, as open until the page has an answer to it', async () => {
  answer = { status: 200, body: one }
  const open = await told('| 2026-01-12 | GHSA-0000-0000-0002 | another | renewed |')
  expect(open.status).toBe(1)
  expect(open.lines[0]).toBe(
    'OPEN      high  leaky-valve: It leaks (https://advisories.example/GHSA-0000-0000-0001)',
  )
  expect(open.lines.at(-1)).toBe('packages 1, advisories 1, without an answer 1')
  const answered = await told('| 2026-01-12 | GHSA-0000-0000-0001 | leaky-valve | does not reach us |')
  expect(answered.status).toBe(0)
  expect(answered.lines[0]).toMatch(/^answered {2}high/)
})

it('does not take a registry without advisories, or none at all, for one that knows of none', async () => {
  answer = { status: 405, body: {} }
  const refused = await told('')
  expect(refused.status).toBe(2)
  expect(refused.lines[0]).toMatch(/^Nothing was compared: .*405/)
  expect(refused.lines.join('\n')).toContain('npm run -s sbom > sbom.json')
  // A port on which nothing listens.
  const none = createServer().listen(0, '127.0.0.1')
  await once(none, 'listening')
  const { port } = none.address() as AddressInfo
  none.close()
  await once(none, 'close')
  const away = advisoryLines(await askRegistry(folder, `http://127.0.0.1:${port}/`), '')
  expect([away.status, away.lines[0]]).toEqual([2, expect.stringContaining('ECONNREFUSED')])
})
