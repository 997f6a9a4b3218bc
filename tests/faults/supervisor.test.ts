import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { chmodSync, existsSync, mkdirSync, readdirSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { ask, type ClosedFolder, makeClosedFolder, startEmbeddedProcess } from './support/embedded-process.ts'

/** A shop's database as its first start leaves it, for what is not about making one: that takes longest. */
let made: ClosedFolder
let folder: ClosedFolder

beforeAll(async () => {
  made = makeClosedFolder()
  await (await startEmbeddedProcess(made.data)).stop()
})
afterAll(() => made.clear())
afterEach(() => folder.clear())

describe('the shop’s own PostgreSQL, once it was made', () => {
  beforeEach(() => {
    folder = makeClosedFolder(made)
  })

  it('starts for root in a folder that is open to read', async () => {
    chmodSync(folder.path, 0o755)
    const server = await startEmbeddedProcess(folder.data, { as: 'root' })
    expect(await ask(server.url, 'select 1 as one')).toEqual([{ one: 1 }])
    await server.stop()
  })

  it('keeps what was written, through a stop and a start', async () => {
    const first = await startEmbeddedProcess(folder.data)
    await ask(first.url, `create table kept as select 'still here' as words`)
    await first.stop()
    const second = await startEmbeddedProcess(folder.data)
    expect(await ask(second.url, 'select words from kept')).toEqual([{ words: 'still here' }])
    await second.stop()
  })

  it('is safe by its settings: to disk at each commit, pages with checksums, loopback only, no trust', async () => {
    const server = await startEmbeddedProcess(folder.data)
    const settings = await ask(
      server.superuserUrl,
      `select name, setting from pg_settings where name in
         ('fsync', 'synchronous_commit', 'full_page_writes', 'data_checksums', 'listen_addresses',
          'unix_socket_directories', 'password_encryption') order by name`,
    )
    expect(Object.fromEntries(settings.map(({ name, setting }) => [name, setting]))).toEqual({
      data_checksums: 'on',
      fsync: 'on',
      full_page_writes: 'on',
      listen_addresses: '127.0.0.1',
      password_encryption: 'scram-sha-256',
      synchronous_commit: 'on',
      unix_socket_directories: '',
    })
    expect(await ask(server.superuserUrl, 'select distinct auth_method from pg_hba_file_rules')).toEqual([
      { auth_method: 'scram-sha-256' },
    ])
    const without = new URL(server.url)
    without.password = 'guessed'
    await expect(ask(without.href, 'select 1')).rejects.toMatchObject({ code: '28P01' })
    await server.stop()
  })

  it('gives Bayledger an owner and a user that serves, no superuser among them, and keeps the passwords', async () => {
    const server = await startEmbeddedProcess(folder.data)
    const who =
      'select rolname, rolsuper, rolcreaterole, rolcreatedb from pg_roles where rolname = current_user'
    expect(await ask(server.url, who)).toEqual([
      { rolname: 'bayledger', rolsuper: false, rolcreaterole: false, rolcreatedb: true },
    ])
    expect(await ask(server.serviceUrl, who)).toEqual([
      { rolname: 'bayledger_service', rolsuper: false, rolcreaterole: false, rolcreatedb: false },
    ])
    await expect(ask(server.serviceUrl, 'create table mine (id int)')).rejects.toMatchObject({
      code: '42501',
    })
    const kept = statSync(join(folder.data, 'postgres/bayledger-passwords.json'))
    expect((kept.mode & 0o777).toString(8)).toBe('600')
    expect((statSync(folder.data).mode & 0o777).toString(8)).toBe('700')
    await server.stop()
  })
})

describe('the shop’s own PostgreSQL', () => {
  beforeEach(() => {
    folder = makeClosedFolder()
  })

  it('starts for a plain user', async () => {
    const server = await startEmbeddedProcess(folder.data, { as: 'plain user' })
    expect(server).toMatchObject({ problem: undefined, userId: expect.any(Number) })
    expect(server.userId).not.toBe(0)
    expect(await ask(server.url, 'select 1 as one')).toEqual([{ one: 1 }])
    await server.stop()
  })

  it('starts for root, below a folder that is closed to everyone else', async () => {
    chmodSync(folder.path, 0o700)
    const server = await startEmbeddedProcess(folder.data, { as: 'root' })
    expect(server).toMatchObject({ problem: undefined, userId: 0 })
    expect(await ask(server.url, 'select 1 as one')).toEqual([{ one: 1 }])
    expect(statSync(join(folder.data, 'postgres')).uid).toBe(process.getuid?.())
    await server.stop()
  })

  it('says what root must do where no other user is available', async () => {
    const server = await startEmbeddedProcess(folder.data, { as: 'root', path: '/nowhere' })
    expect(server.problem).toMatch(/does not run as root.*ordinary user.*unshare.*DATABASE_URL/)
    expect(readdirSync(folder.data)).toEqual([])
  })

  it('draws other passwords for every shop', async () => {
    const servers = [await startEmbeddedProcess(made.data), await startEmbeddedProcess(folder.data)]
    const passwords = servers.flatMap(({ url, serviceUrl, superuserUrl }) =>
      [url, serviceUrl, superuserUrl].map((address) => new URL(address).password),
    )
    expect(new Set(passwords).size).toBe(6)
    for (const server of servers) await server.stop()
  })

  it('makes the database again when the first start was cut off in the middle', async () => {
    // The process number that an unfinished cluster bears belongs to no process: the largest that Linux may give is 2^22.
    const unfinished = join(folder.data, 'postgres-unfinished-4194305')
    mkdirSync(join(unfinished, 'cluster/base'), { recursive: true })
    writeFileSync(join(unfinished, 'cluster/PG_VERSION'), '18\n')
    const server = await startEmbeddedProcess(folder.data)
    expect(await ask(server.url, 'select 1 as one')).toEqual([{ one: 1 }])
    expect(existsSync(unfinished)).toBe(false)
    await server.stop()
  })

  it('makes the database again after a kill in the middle of making it', async () => {
    const parameters = [join(import.meta.dirname, 'support/run-embedded.ts'), folder.data]
    const killed = spawn(process.execPath, parameters, { stdio: 'ignore' })
    const ended = once(killed, 'exit')
    await vi.waitUntil(
      () => existsSync(join(folder.data, `postgres-unfinished-${killed.pid}/cluster/base`)),
      {
        timeout: 30_000,
        interval: 1,
      },
    )
    killed.kill('SIGKILL')
    await ended
    const server = await startEmbeddedProcess(folder.data)
    expect(server.problem).toBeUndefined()
    expect(await ask(server.url, 'select 1 as one')).toEqual([{ one: 1 }])
    await server.stop()
  })

  it('refuses a folder that holds no database, without touching it', async () => {
    mkdirSync(join(folder.data, 'postgres/photos'), { recursive: true })
    const server = await startEmbeddedProcess(folder.data)
    expect(server.problem).toMatch(/holds no database \(no PG_VERSION\).*move it away.*backup/)
    expect(readdirSync(join(folder.data, 'postgres'))).toEqual(['photos'])
  })

  it('refuses data of another PostgreSQL version, without touching them', async () => {
    mkdirSync(join(folder.data, 'postgres'), { recursive: true })
    writeFileSync(join(folder.data, 'postgres/PG_VERSION'), '17\n')
    const server = await startEmbeddedProcess(folder.data)
    expect(server.problem).toMatch(/written by PostgreSQL 17.*brings PostgreSQL 18/)
    expect(readdirSync(join(folder.data, 'postgres'))).toEqual(['PG_VERSION'])
  })
})
