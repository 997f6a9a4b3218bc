import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { makeAuthority, makeHostCertificate } from '../../apps/api/src/host-certificate.ts'
import { createTestDatabase, type TestDatabase } from '../support/database.ts'

/** What the service says that cannot start: in words, without a password and without a stack. */
let database: TestDatabase
let data: string
beforeAll(async () => {
  database = await createTestDatabase()
  data = mkdtempSync(join(tmpdir(), 'bayledger-start-'))
})
afterAll(async () => {
  await database.drop()
  rmSync(data, { recursive: true, force: true })
})

const start = async (environment: Record<string, string>) => {
  const child = spawn(process.execPath, ['apps/api/src/commands/serve.ts'], {
    env: { ...process.env, DATA_FOLDER: data, PORT: '0', ...environment },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let said = ''
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (text) => {
      said += text
    })
  const [status] = (await once(child, 'close')) as [number | null]
  expect(said).not.toMatch(/\n\s+at /)
  return { status, said }
}
const withPassword = (url: string, change: Partial<URL>) =>
  Object.assign(new URL(url), { password: 'a-secret-of-ours' }, change).href

describe('a service that cannot start', () => {
  it.each([
    ['refuses the name or the password', {}],
    ['nothing answers there', { port: '1' }],
  ])('says that its database %s, and never its password', async (words, change) => {
    const { status, said } = await start({
      DATABASE_URL: withPassword(database.serviceUrl, change),
      DATABASE_OWNER_URL: withPassword(database.url, change),
    })
    expect(status).toBe(1)
    expect(said).toContain(words)
    expect(said).not.toContain('a-secret-of-ours')
  })

  it('serves the demo’s published passwords to this machine only, with TLS too', async () => {
    const now = new Date()
    const authority = await makeAuthority('Test', now)
    const { certificatePem, privateKeyPem } = await makeHostCertificate(authority, ['desk.shop.lan'], now)
    const files = { TLS_CERT: join(data, 'host.pem'), TLS_KEY: join(data, 'host-key.pem') }
    writeFileSync(files.TLS_CERT, certificatePem)
    writeFileSync(files.TLS_KEY, privateKeyPem)
    const { status, said } = await start({
      ...files,
      DATABASE_URL: database.serviceUrl,
      DATABASE_OWNER_URL: database.url,
      HOST: '0.0.0.0',
    })
    expect(status).toBe(1)
    expect(said).toContain('passwords of the demo shop are published')
  })
})
