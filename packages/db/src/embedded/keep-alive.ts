import type { Client } from 'pg'
import { keepLogBounded } from './bound-log.ts'
import type { Cluster } from './cluster.ts'
import { ensureRunning } from './ensure-running.ts'
import { pause } from './pause.ts'
import { stopPostmaster } from './postmaster.ts'
import { EmbeddedPostgresProblem } from './problem.ts'

/** Says in the database "a living Bayledger runs this server": gone with its connection, however it dies. */
const SUPERVISOR_LOCK = 2_607_180_842

export type KeptServer = { readonly port: number; readonly stop: () => Promise<void> }

/**
 * Runs the cluster's server and holds one connection to it. The connection carries the supervisor's lock, and its
 * end is how we hear that the server died: then it is started again on the same port.
 */
export async function keepAlive(cluster: Cluster, whenInUse: 'refuse' | 'join'): Promise<KeptServer> {
  let running = await ensureRunning(cluster, undefined)
  if (!(await takeLock(running.connection))) {
    await running.connection.end()
    if (whenInUse === 'join') return { port: running.port, stop: async () => undefined }
    throw new EmbeddedPostgresProblem(
      `Another Bayledger is running on ${cluster.folder}. Stop it first; or give this one a data folder of its own.`,
    )
  }
  let stopping = false
  let restarting: Promise<void> = Promise.resolve()

  const watch = (connection: Client) =>
    connection.once('end', () => {
      if (!stopping) restarting = restart()
    })
  const restart = async () => {
    cluster.progress('the connection to PostgreSQL broke; seeing to it that it runs …')
    try {
      running = await ensureRunning(cluster, running.port)
      await takeLock(running.connection)
      watch(running.connection)
      cluster.progress('PostgreSQL runs again; nothing that was confirmed is lost.')
    } catch (error) {
      cluster.progress(
        `PostgreSQL is down and does not come back: ${error instanceof Error ? error.message : error}`,
      )
    }
  }
  watch(running.connection)
  const leaveLog = keepLogBounded(cluster.log, cluster.progress)

  return {
    port: running.port,
    stop: async () => {
      stopping = true
      leaveLog()
      await restarting
      await running.connection.end().catch(() => undefined)
      await stopPostmaster(cluster, running.pid)
    },
  }
}

/** Tries for two seconds: PostgreSQL may still be noticing that the one before us was killed. */
async function takeLock(connection: Client): Promise<boolean> {
  for (let attempt = 0; attempt < 20; attempt += 1) {
    const { rows } = await connection.query<{ taken: boolean }>('select pg_try_advisory_lock($1) as taken', [
      SUPERVISOR_LOCK,
    ])
    if (rows[0]?.taken === true) return true
    await pause(100)
  }
  return false
}
