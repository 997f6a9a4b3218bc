import { existsSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Binaries } from '../embedded/binaries.ts'
import type { Identity } from '../embedded/identity.ts'
import { readLockFile } from '../embedded/lock-file.ts'
import { pause } from '../embedded/pause.ts'
import { freePort, spawnPostmaster, stopPostmaster } from '../embedded/postmaster.ts'
import { BackupProblem } from './backup-problem.ts'

/** How far the log is followed. */
export type RecoveryTarget =
  | { readonly kind: 'end' }
  | { readonly kind: 'mark'; readonly name: string }
  /** Everything committed at this instant or before. */
  | { readonly kind: 'time'; readonly at: Date }

export type ClusterToRecover = {
  /** The copied cluster; its log is in its `pg_wal`. */
  readonly folder: string
  readonly log: string
  readonly binaries: Binaries
  readonly identity: Identity
  readonly progress: (line: string) => void
}

/** PostgreSQL's words where the log ends before the target. */
const ENDED_BEFORE = 'recovery ended before configured recovery target was reached'

/**
 * Lets PostgreSQL make a copied cluster whole by following its log up to the target, and stops it again. Where the log
 * ends before the instant that was given, everything in it is before that instant, and all of it is taken.
 *
 * @source PostgreSQL manual, 25.3.5 Recovering Using a Continuous Archive Backup; 19.5.6 Recovery Target.
 */
export async function recoverCluster(cluster: ClusterToRecover, target: RecoveryTarget): Promise<void> {
  writeFileSync(join(cluster.folder, 'recovery.signal'), '', { mode: 0o600 })
  const said = await runToEnd(cluster, target)
  if (said === null) return
  if (target.kind === 'time' && said.includes(ENDED_BEFORE)) {
    const again = await runToEnd(cluster, { kind: 'end' })
    if (again === null) return
  }
  throw new BackupProblem(
    `PostgreSQL cannot restore this copy. It said:\n${said.trim().split('\n').slice(-6).join('\n')}`,
  )
}

/** `null`: it reached its target and was stopped; else what it said before it ended by itself. */
async function runToEnd(cluster: ClusterToRecover, target: RecoveryTarget): Promise<string | null> {
  rmSync(join(cluster.folder, 'postmaster.pid'), { force: true })
  const server = spawnPostmaster(
    { ...cluster, settings: { ...settingsFor(target), hot_standby: 'off' } },
    await freePort(),
  )
  let nextLine = performance.now() + 2000
  while (!server.hasEnded()) {
    const lock = readLockFile(cluster.folder)
    if (lock?.status.startsWith('ready') && !existsSync(join(cluster.folder, 'recovery.signal'))) {
      await stopPostmaster(cluster, lock.pid)
      return null
    }
    if (performance.now() > nextLine) {
      cluster.progress('PostgreSQL follows its log …')
      nextLine = performance.now() + 5000
    }
    await pause(25)
  }
  return server.said()
}

function settingsFor(target: RecoveryTarget): Readonly<Record<string, string>> {
  // PostgreSQL wants a command that fetches the log; ours is in its place already, and so the command finds nothing.
  const always = {
    restore_command: 'exit 1',
    recovery_target_timeline: 'current',
    recovery_target_action: 'promote',
  }
  if (target.kind === 'mark') return { ...always, recovery_target_name: target.name }
  // At this point of its start PostgreSQL knows no names of zones, not even Z.
  if (target.kind === 'time')
    return { ...always, recovery_target_time: target.at.toISOString().replace('Z', '+00:00') }
  return always
}
