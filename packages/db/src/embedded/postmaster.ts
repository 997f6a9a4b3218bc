import { spawn } from 'node:child_process'
import { closeSync, openSync, readFileSync, statSync } from 'node:fs'
import { createServer } from 'node:net'
import { boundLog } from './bound-log.ts'
import type { Cluster } from './cluster.ts'
import { isAlive } from './lock-file.ts'
import { pause } from './pause.ts'
import { EmbeddedPostgresProblem } from './problem.ts'
import { plainEnvironment, runProgram } from './run-program.ts'

const FAST_SHUTDOWN_SECONDS = 60

/** A PostgreSQL that was just started and has perhaps already ended again. */
export type Postmaster = {
  readonly hasEnded: () => boolean
  /** What it wrote to the log since it was started. */
  readonly said: () => string
}

/**
 * Starts PostgreSQL on the loopback address only. It leads a session of its own, so that Ctrl-C reaches the
 * server of Bayledger first, which then stops PostgreSQL after its last request.
 */
export function spawnPostmaster(
  cluster: Pick<Cluster, 'folder' | 'log' | 'binaries' | 'identity' | 'settings'>,
  port: number,
): Postmaster {
  boundLog(cluster.log)
  const log = openSync(cluster.log, 'a', 0o600)
  const start = statSync(cluster.log).size
  const settings = {
    listen_addresses: '127.0.0.1',
    port: String(port),
    unix_socket_directories: '',
    // Where nobody copies the log any more, the disk of the shop must not fill up with it.
    max_slot_wal_keep_size: '4GB',
    ...cluster.settings,
  }
  const parameters = Object.entries(settings).flatMap(([name, value]) => ['-c', `${name}=${value}`])
  const [command = '', ...rest] = [...cluster.identity, cluster.binaries.postgres, '-D', cluster.folder]
  const child = spawn(command, [...rest, ...parameters], {
    detached: true,
    stdio: ['ignore', log, log],
    env: plainEnvironment(),
  })
  closeSync(log)
  let ended = false
  child.once('exit', () => {
    ended = true
  })
  child.once('error', () => {
    ended = true
  })
  child.unref()
  return {
    hasEnded: () => ended,
    said: () => readFileSync(cluster.log).subarray(start).toString('utf8'),
  }
}

/** Fast shutdown: open transactions are rolled back, everything committed is on disk. Immediate after a minute. */
export async function stopPostmaster(
  cluster: Pick<Cluster, 'folder' | 'binaries' | 'identity' | 'progress'>,
  pid: number,
): Promise<void> {
  if (process.platform === 'win32') {
    await runProgram(cluster.identity, cluster.binaries.pgCtl, [
      'stop',
      '-D',
      cluster.folder,
      '-m',
      'fast',
      '-w',
    ])
    return
  }
  signal(pid, 'SIGINT')
  if (await endsWithin(pid, FAST_SHUTDOWN_SECONDS)) return
  cluster.progress('PostgreSQL does not end; stopping it at once (it recovers at the next start) …')
  signal(pid, 'SIGQUIT')
  if (await endsWithin(pid, FAST_SHUTDOWN_SECONDS)) return
  throw new EmbeddedPostgresProblem(
    `PostgreSQL (process ${pid}) does not end. End it by hand, then start again.`,
  )
}

/** A loopback port that is free now. Another program may take it before PostgreSQL does; then call again. */
export function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer()
    server.once('error', reject)
    server.listen(0, '127.0.0.1', () => {
      const address = server.address()
      const port = typeof address === 'object' && address !== null ? address.port : 0
      server.close(() => resolve(port))
    })
  })
}

function signal(pid: number, name: 'SIGINT' | 'SIGQUIT'): void {
  try {
    process.kill(pid, name)
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'ESRCH')) throw error
  }
}

async function endsWithin(pid: number, seconds: number): Promise<boolean> {
  const deadline = performance.now() + seconds * 1000
  while (performance.now() < deadline) {
    if (!isAlive(pid)) return true
    await pause(20)
  }
  return false
}
