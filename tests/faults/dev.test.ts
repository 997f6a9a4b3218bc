import { type ChildProcess, spawn } from 'node:child_process'
import { randomUUID } from 'node:crypto'
import { once } from 'node:events'
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { isAlive, readLockFile } from '@bayledger/db/embedded/lock-file'
import { freePort } from '@bayledger/db/embedded/postmaster'
import { withClient } from '@bayledger/db/with-client'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { createTestDatabase, type TestDatabase } from '../support/database.ts'
import { copyRepository } from './support/copy-repository.ts'

/** `npm run dev` in a copy of the repository, as whoever works on Bayledger runs it. */
let copy: string
let database: TestDatabase
beforeAll(async () => {
  copy = copyRepository()
  database = await createTestDatabase()
  await withClient(database.url, (owner) =>
    owner.query("insert into shops (id, name) values ($1, 'A shop without orders')", [randomUUID()]),
  )
})
afterAll(async () => {
  await database.drop()
  rmSync(copy, { recursive: true, force: true })
})

/** In a process group of its own, as a terminal starts it. */
const startDev = (environment: NodeJS.ProcessEnv) => {
  const { DATABASE_URL: _, DATABASE_OWNER_URL: __, ...inherited } = process.env
  const child = spawn('npm', ['run', 'dev'], {
    cwd: copy,
    detached: true,
    env: { ...inherited, SHOP_SEED: 'none', LOG_LEVEL: 'warn', ...environment },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const lines: string[] = []
  const waiting = new Set<() => void>()
  const look = () => {
    for (const one of waiting) one()
  }
  for (const stream of [child.stdout, child.stderr])
    createInterface({ input: stream }).on('line', (line) => {
      lines.push(line)
      look()
    })
  child.on('exit', look)
  /** Waits until a line was printed for the given time. */
  const until = (words: RegExp, times = 1): Promise<void> =>
    new Promise<void>((resolve, reject) => {
      const isThere = () => {
        if (lines.filter((line) => words.test(line)).length >= times) resolve()
        else if (hasEnded(child)) reject(new Error(`it ended:\n${lines.join('\n')}`))
        else return
        waiting.delete(isThere)
      }
      waiting.add(isThere)
      isThere()
    })
  return { child, group: child.pid ?? 0, lines, until }
}

const isGroupAlive = (group: number): boolean => {
  try {
    process.kill(-group, 0)
    return true
  } catch {
    return false
  }
}

const hasEnded = (child: ChildProcess): boolean => child.exitCode !== null || child.signalCode !== null

const ended = async (child: ChildProcess): Promise<void> => {
  if (!hasEnded(child)) await once(child, 'exit')
}

const edit = (file: string, from: string, to: string): void => {
  const text = readFileSync(join(copy, file), 'utf8')
  expect(text).toContain(from)
  writeFileSync(join(copy, file), text.replace(from, to))
}

describe('npm run dev', () => {
  it('serves the three faces and the API, follows a change of either, and ends with Ctrl+C leaving no process', async () => {
    const port = await freePort()
    const { child, group, lines, until } = startDev({
      DATABASE_URL: database.serviceUrl,
      DATABASE_OWNER_URL: database.url,
      DATA_FOLDER: join(copy, 'data'),
      PORT: String(port),
    })
    const address = `http://localhost:${port}`
    const textAt = async (path: string): Promise<string> => {
      const reply = await fetch(`${address}${path}`)
      expect(reply.status, path).toBe(200)
      return reply.text()
    }
    try {
      await until(/Bayledger is ready/)
      for (const face of ['desk', 'bay', 'customer']) {
        const script = /<script[^>]*src="([^"]+)"/.exec(await textAt(`/${face}`))?.[1] ?? 'none'
        expect(await textAt(script), face).not.toBe('')
      }
      expect(JSON.parse(await textAt('/healthz'))).toEqual({ status: 'alive' })
      expect(JSON.parse(await textAt('/api/openapi.json')).info.title).toBe('Bayledger')

      edit('apps/api/src/http/open-api.ts', "title: 'Bayledger'", "title: 'Bayledger, changed'")
      await until(/Bayledger is ready/, 2)
      expect(JSON.parse(await textAt('/api/openapi.json')).info.title).toBe('Bayledger, changed')

      edit('apps/web/customer.html', '</title>', ', changed</title>')
      await until(/^customer: built/, 2)
      expect(await textAt('/customer')).toContain(', changed</title>')

      process.kill(-group, 'SIGINT')
      await ended(child)
      await vi.waitUntil(() => !isGroupAlive(group), { timeout: 30_000 })
      await expect(fetch(`${address}/healthz`)).rejects.toThrow()
      expect(lines.join('\n')).toContain('Finishing what is in flight')
    } finally {
      if (isGroupAlive(group)) process.kill(-group, 'SIGKILL')
    }
  })

  it('ends with SIGTERM while the faces are still built, its own PostgreSQL with it', async () => {
    const data = join(copy, 'other-data')
    const { child, group, until } = startDev({ DATA_FOLDER: data, PORT: String(await freePort()) })
    try {
      await vi.waitUntil(() => existsSync(join(data, 'postgres/postmaster.pid')), { timeout: 60_000 })
      const postgres = readLockFile(join(data, 'postgres'))?.pid ?? 0
      expect(isAlive(postgres)).toBe(true)
      child.kill('SIGTERM')
      await ended(child)
      await vi.waitUntil(() => !isGroupAlive(group) && !isAlive(postgres), { timeout: 30_000 })
      await expect(until(/Bayledger is ready/)).rejects.toThrow('it ended')
    } finally {
      if (isGroupAlive(group)) process.kill(-group, 'SIGKILL')
    }
  })
})
