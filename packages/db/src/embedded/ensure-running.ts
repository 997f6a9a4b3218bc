import { realpathSync } from 'node:fs'
import { Client } from 'pg'
import { type Cluster, superuserOf } from './cluster.ts'
import { disownLockFile, holderOf, type LockFile, readLockFile } from './lock-file.ts'
import { pause } from './pause.ts'
import { freePort, type Postmaster, spawnPostmaster, stopPostmaster } from './postmaster.ts'
import { EmbeddedPostgresProblem } from './problem.ts'

export type Running = { readonly pid: number; readonly port: number; readonly connection: Client }

/** How long a dead server's orphaned processes may hold its memory and lock before we give up. */
const ORPHANS_LEAVE_WITHIN_MS = 10_000

/**
 * Comes back with a connection to a PostgreSQL that runs on this folder: one that was left running is adopted when
 * it is of the same binary, stopped and replaced when it is not; without one, a new one is started, again and again
 * for up to ten seconds while orphans of a killed server leave. `port` is kept when given.
 */
export async function ensureRunning(cluster: Cluster, port: number | undefined): Promise<Running> {
  let deadline = performance.now() + ORPHANS_LEAVE_WITHIN_MS
  let started: Postmaster | undefined
  let nextLine = performance.now() + 2000
  while (true) {
    const lock = readLockFile(cluster.folder)
    const holder = lock === undefined ? 'nobody' : holderOf(lock, cluster.folder, cluster.binaries.postgres)
    if (lock !== undefined && holder === 'another binary') {
      cluster.progress('stopping a PostgreSQL that another installation left running on this folder …')
      await stopPostmaster(cluster, lock.pid)
    } else if (lock !== undefined && holder === 'ours') {
      const connection = await connect(cluster, lock)
      if (connection !== undefined && lock.port !== undefined) {
        return { pid: lock.pid, port: lock.port, connection }
      }
      // Recovery after a power cut may take longer than any fixed time: as long as it lives, it is waited for.
      deadline = performance.now() + ORPHANS_LEAVE_WITHIN_MS
    } else if (started === undefined || started.hasEnded()) {
      if (started !== undefined && performance.now() > deadline)
        throw new EmbeddedPostgresProblem(why(started))
      if (lock !== undefined) disownLockFile(cluster.folder)
      started = spawnPostmaster(cluster, port ?? (await freePort()))
    }
    if (performance.now() > nextLine) {
      cluster.progress(`waiting for PostgreSQL (${lastLine(started)}) …`)
      nextLine = performance.now() + 5000
    }
    await pause(started?.hasEnded() ? 200 : 25)
  }
}

/** Undefined while it still starts, recovers or ends. */
async function connect(cluster: Cluster, lock: LockFile): Promise<Client | undefined> {
  if (lock.port === undefined || !lock.status.startsWith('ready')) return undefined
  const client = new Client(superuserOf(cluster, lock.port))
  client.on('error', () => undefined)
  try {
    await client.connect()
  } catch (error) {
    await client.end().catch(() => undefined)
    if (isRefusedPassword(error)) {
      throw new EmbeddedPostgresProblem(
        `The PostgreSQL that runs on ${cluster.folder} does not take the password kept there. If the folder was copied from elsewhere, copy it whole, with its passwords file.`,
      )
    }
    return undefined
  }
  const { rows } = await client.query<{ folder: string }>(
    `select current_setting('data_directory') as folder`,
  )
  if (rows[0] !== undefined && realpathSync(rows[0].folder) === realpathSync(cluster.folder)) return client
  await client.end()
  throw new EmbeddedPostgresProblem(
    `Port ${lock.port} is answered by the PostgreSQL of another folder, not of ${cluster.folder}. Stop it and start again.`,
  )
}

function isRefusedPassword(error: unknown): boolean {
  return error instanceof Error && 'code' in error && error.code === '28P01'
}

function why(postmaster: Postmaster): string {
  return `PostgreSQL does not start. It said:\n${postmaster.said().trim().split('\n').slice(-6).join('\n')}`
}

function lastLine(postmaster: Postmaster | undefined): string {
  return (
    postmaster
      ?.said()
      .trim()
      .split('\n')
      .at(-1)
      ?.replace(/^.*?\] /, '') || 'it is starting or ending'
  )
}
