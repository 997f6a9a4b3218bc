import { execFileSync, spawn } from 'node:child_process'
import { once } from 'node:events'
import { existsSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { isAlive, readLockFile } from '@bayledger/db/embedded/lock-file'
import { withClient } from '@bayledger/db/with-client'
import { makeQuickFolder } from '../../support/quick-folder.ts'

/** How a test's process sees itself; where the run is of the other kind, a user namespace makes it so. */
export type As = 'plain user' | 'root'

export type EmbeddedProcess = {
  readonly pid: number
  /** As the owner of the shop's database. */
  readonly url: string
  readonly serviceUrl: string
  readonly superuserUrl: string
  readonly userId: number
  readonly problem: string | undefined
  readonly progress: () => string
  /** SIGTERM, then waits for its end. */
  readonly stop: () => Promise<void>
  /** SIGKILL: its PostgreSQL stays behind. */
  readonly kill: () => Promise<void>
}

const PROGRAM = join(import.meta.dirname, 'run-embedded.ts')

/** Starts `run-embedded.ts` on a data folder and waits for its first line. */
export async function startEmbeddedProcess(
  dataFolder: string,
  options: { as?: As; path?: string; whenInUse?: 'join' } = {},
): Promise<EmbeddedProcess> {
  const parameters = [PROGRAM, dataFolder, ...(options.whenInUse === undefined ? [] : [options.whenInUse])]
  const [command = '', ...rest] = [...disguise(options.as), process.execPath, ...parameters]
  const child = spawn(command, rest, {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, PATH: options.path ?? process.env.PATH },
  })
  const ended = once(child, 'exit')
  let progress = ''
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    progress += text
  })
  const lines = createInterface({ input: child.stdout })
  const first = await Promise.race([once(lines, 'line'), ended.then(() => [undefined])])
  const line: unknown = first[0]
  if (typeof line !== 'string') throw new Error(`run-embedded.ts ended without a word: ${progress}`)
  const said: Record<string, unknown> = JSON.parse(line)
  if (said.problem !== undefined) await ended
  return {
    pid: child.pid ?? 0,
    url: String(said.url),
    serviceUrl: String(said.serviceUrl),
    superuserUrl: String(said.superuserUrl),
    userId: Number(said.userId),
    problem: typeof said.problem === 'string' ? said.problem : undefined,
    progress: () => progress,
    stop: async () => {
      child.kill('SIGTERM')
      await ended
    },
    kill: async () => {
      child.kill('SIGKILL')
      await ended
    },
  }
}

export type ClosedFolder = {
  readonly path: string
  readonly data: string
  readonly clear: () => Promise<void>
}

/**
 * A closed folder (mode 0700) for one test; at the end whatever still runs on it is ended, then it is removed. `from`: a
 * folder whose data it begins with, in which nothing runs.
 */
export function makeClosedFolder(from?: ClosedFolder): ClosedFolder {
  const path = makeQuickFolder('bayledger-faults-')
  const data = join(path, 'data')
  // Unlike Node's own copy it keeps the modes of folders, which PostgreSQL looks at.
  if (from !== undefined) execFileSync('cp', ['-a', from.data, data])
  const clear = async () => {
    const pid = existsSync(data) ? readLockFile(join(data, 'postgres'))?.pid : undefined
    if (pid !== undefined && pid !== process.pid && isAlive(pid)) {
      process.kill(pid, 'SIGQUIT')
      while (isAlive(pid)) await new Promise((resolve) => setTimeout(resolve, 20))
    }
    rmSync(path, { recursive: true, force: true })
  }
  return { path, data, clear }
}

/** Runs one query at an address and gives its rows. */
export function ask(url: string, query: string): Promise<Record<string, unknown>[]> {
  return withClient(url, async (client) => (await client.query<Record<string, unknown>>(query)).rows)
}

function disguise(as: As | undefined): string[] {
  const isRoot = process.getuid?.() === 0
  if (as === 'plain user' && isRoot) {
    return ['unshare', '--user', '--map-user=1000', '--map-group=1000', '--']
  }
  if (as === 'root' && !isRoot) return ['unshare', '--user', '--map-root-user', '--']
  return []
}
