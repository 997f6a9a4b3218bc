import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { findBinaries } from '@bayledger/db/embedded/binaries'
import { isAlive, readLockFile } from '@bayledger/db/embedded/lock-file'
import { freePort } from '@bayledger/db/embedded/postmaster'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, onTestFinished, vi } from 'vitest'
import { ask, type ClosedFolder, makeClosedFolder, startEmbeddedProcess } from './support/embedded-process.ts'

/** A shop's database as its first start leaves it: making one takes longer than most of what is tested here. */
let made: ClosedFolder
let folder: ClosedFolder

beforeAll(async () => {
  made = makeClosedFolder()
  await (await startEmbeddedProcess(made.data)).stop()
})
afterAll(() => made.clear())

beforeEach(() => {
  folder = makeClosedFolder(made)
})
afterEach(() => folder.clear())

describe('after Bayledger was killed', () => {
  it('the next one adopts the PostgreSQL that was left behind, with every confirmed row', async () => {
    const first = await startEmbeddedProcess(folder.data)
    await ask(first.url, 'create table kept as select generate_series(1, 100) as id')
    const orphan = postmasterPid()
    await first.kill()
    expect(isAlive(orphan)).toBe(true)

    const second = await startEmbeddedProcess(folder.data)
    expect(second.problem).toBeUndefined()
    expect(postmasterPid()).toBe(orphan)
    expect(await ask(second.url, 'select count(*)::int as rows from kept')).toEqual([{ rows: 100 }])
    await second.stop()
    expect(isAlive(orphan)).toBe(false)
  })

  it('the next one replaces a PostgreSQL of another installation', async () => {
    const elsewhere = mkdtempSync(join(tmpdir(), 'bayledger-elsewhere-'))
    const native = join(dirname(findBinaries().postgres), '..')
    onTestFinished(() => rmSync(elsewhere, { recursive: true, force: true }))
    cpSync(native, elsewhere, { recursive: true, verbatimSymlinks: true })
    const first = await startEmbeddedProcess(folder.data)
    await ask(first.url, `create table kept as select 'still here' as words`)
    await first.stop()
    const foreign = await startForeign(join(elsewhere, 'bin/postgres'))

    const second = await startEmbeddedProcess(folder.data)
    expect(second.problem).toBeUndefined()
    expect(postmasterPid()).not.toBe(foreign)
    expect(isAlive(foreign)).toBe(false)
    expect(await ask(second.url, 'select words from kept')).toEqual([{ words: 'still here' }])
    await second.stop()
  })

  it('and PostgreSQL with it, the next one starts although orphaned backends still leave', async () => {
    const first = await startEmbeddedProcess(folder.data)
    await ask(first.url, `create table kept as select 'still here' as words`)
    const busy = ask(first.url, 'select pg_sleep(30)').catch(() => 'cut')
    await vi.waitUntil(
      async () =>
        (await ask(first.url, `select from pg_stat_activity where query like '%pg_sleep(30)'`)).length > 0,
    )
    await first.kill()
    process.kill(postmasterPid(), 'SIGKILL')

    const second = await startEmbeddedProcess(folder.data)
    expect(second.problem).toBeUndefined()
    expect(await ask(second.url, 'select words from kept')).toEqual([{ words: 'still here' }])
    expect(await busy).toBe('cut')
    await second.stop()
  })

  it('and its number went to another program, the next one starts and leaves that program running', async () => {
    const first = await startEmbeddedProcess(folder.data)
    const pid = postmasterPid()
    await first.kill()
    process.kill(pid, 'SIGKILL')
    const stranger = spawn('sleep', ['60'])
    const ended = once(stranger, 'exit')
    const lockFile = join(folder.data, 'postgres/postmaster.pid')
    writeFileSync(lockFile, readFileSync(lockFile, 'utf8').replace(String(pid), String(stranger.pid)))

    const second = await startEmbeddedProcess(folder.data)
    expect(second.problem).toBeUndefined()
    expect(isAlive(stranger.pid ?? 0)).toBe(true)
    await second.stop()
    stranger.kill()
    await ended
  })

  it('four times while it was writing, no confirmed row is lost', async () => {
    let confirmed = 0
    for (let round = 0; round < 4; round += 1) {
      const server = await startEmbeddedProcess(folder.data)
      await ask(server.url, 'create table if not exists kept (id int primary key)')
      expect(
        await ask(server.url, `select count(*)::int as rows from kept where id <= ${confirmed}`),
      ).toEqual([{ rows: confirmed }])
      for (let row = 0; row < 20; row += 1) {
        await ask(server.url, `insert into kept values (${confirmed + 1})`)
        confirmed += 1
      }
      await server.kill()
      // Every other time PostgreSQL is killed too, so that both ways of coming back are taken.
      if (round % 2 === 0) process.kill(postmasterPid(), 'SIGKILL')
    }
  })
})

describe('while Bayledger runs', () => {
  it('a second one on the same folder is refused, and a command may join', async () => {
    const first = await startEmbeddedProcess(folder.data)
    const second = await startEmbeddedProcess(folder.data)
    expect(second.problem).toMatch(/Another Bayledger is running on .*Stop it first/)
    const command = await startEmbeddedProcess(folder.data, { whenInUse: 'join' })
    expect(command.url).toBe(first.url)
    await command.stop()
    expect(await ask(first.url, 'select 1 as one')).toEqual([{ one: 1 }])
    await first.stop()
  })

  it('a PostgreSQL that dies is started again at the same address', async () => {
    const server = await startEmbeddedProcess(folder.data)
    await ask(server.url, `create table kept as select 'still here' as words`)
    process.kill(postmasterPid(), 'SIGKILL')
    await vi.waitUntil(() => server.progress().includes('PostgreSQL runs again'), { timeout: 30_000 })
    expect(await ask(server.url, 'select words from kept')).toEqual([{ words: 'still here' }])
    await server.stop()
  })
})

function postmasterPid(): number {
  const pid = readLockFile(join(folder.data, 'postgres'))?.pid
  if (pid === undefined) throw new Error('PostgreSQL has no lock file')
  return pid
}

/** Runs another copy of PostgreSQL on the folder, as an older installation would have left it. */
async function startForeign(postgres: string): Promise<number> {
  const disguise =
    process.getuid?.() === 0 ? ['unshare', '--user', '--map-user=1000', '--map-group=1000', '--'] : []
  const settings = ['-c', `port=${await freePort()}`, '-c', 'unix_socket_directories=']
  const [command = '', ...rest] = [...disguise, postgres, '-D', join(folder.data, 'postgres'), ...settings]
  const child = spawn(command, rest, { detached: true, stdio: 'ignore' })
  child.unref()
  await vi.waitUntil(() => readLockFile(join(folder.data, 'postgres'))?.status === 'ready', {
    timeout: 30_000,
  })
  return postmasterPid()
}
