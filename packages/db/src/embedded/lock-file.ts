import { execFileSync } from 'node:child_process'
import { readFileSync, readlinkSync, realpathSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'

/** What PostgreSQL writes into `postmaster.pid`: its process, its port, and how far it has come. */
export type LockFile = { readonly pid: number; readonly port: number | undefined; readonly status: string }

/** Whose the process named in a lock file is. */
export type Holder = 'nobody' | 'ours' | 'another binary'

export function readLockFile(cluster: string): LockFile | undefined {
  let lines: string[]
  try {
    lines = readFileSync(join(cluster, 'postmaster.pid'), 'utf8').split('\n')
  } catch {
    return undefined
  }
  const pid = Math.abs(Number(lines[0]))
  if (!Number.isInteger(pid) || pid === 0) return undefined
  const port = Number(lines[3])
  return { pid, port: port > 0 ? port : undefined, status: lines[7]?.trim() ?? '' }
}

/**
 * After a kill the number in the lock file may meanwhile belong to some other program, or to the PostgreSQL of
 * another folder. Linux says which program a process runs and its working directory (PostgreSQL's is its data
 * folder); elsewhere the program's path must do, and the caller queries the server itself for its folder.
 */
export function holderOf(lock: LockFile, cluster: string, postgres: string): Holder {
  if (!isAlive(lock.pid)) return 'nobody'
  if (process.platform === 'win32') return 'ours'
  const program = programOf(lock.pid)
  if (program === undefined || !basename(program).startsWith('postgres')) return 'nobody'
  if (process.platform === 'linux' && folderOf(lock.pid) !== realpathSync(cluster)) return 'nobody'
  return program === realpathSync(postgres) ? 'ours' : 'another binary'
}

/**
 * PostgreSQL refuses to start while the process in its lock file lives, whatever that process is. It does take
 * its own parent's number there for a leftover, and then still looks at the shared memory the file names. So a
 * number that proved to be foreign is replaced by ours; the file is never removed, or orphaned backends of the
 * dead server would go unseen.
 */
export function disownLockFile(cluster: string): void {
  const file = join(cluster, 'postmaster.pid')
  const [, ...rest] = readFileSync(file, 'utf8').split('\n')
  writeFileSync(file, [process.pid, ...rest].join('\n'))
}

/** Whether a process with this number runs, of whatever user; one that has ended and waits for its parent does not. */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0)
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM'
  }
  return process.platform !== 'linux' || !isDefunct(pid)
}

function isDefunct(pid: number): boolean {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8')
    return stat.slice(stat.lastIndexOf(')') + 2).startsWith('Z')
  } catch {
    return true
  }
}

function programOf(pid: number): string | undefined {
  try {
    if (process.platform === 'linux') return readlinkSync(`/proc/${pid}/exe`)
    return execFileSync('ps', ['-o', 'comm=', '-p', String(pid)], { encoding: 'utf8' }).trim()
  } catch {
    return undefined
  }
}

function folderOf(pid: number): string | undefined {
  try {
    return readlinkSync(`/proc/${pid}/cwd`)
  } catch {
    return undefined
  }
}
