import { Pool, types } from 'pg'

/** A day without a clock, as text: a Date would move it by the server's time zone. */
const OID_OF_DATE = 1082

export type PoolOptions = {
  readonly url: string
  /** Most connections at once; further work waits. */
  readonly size?: number
  /** Called when an idle connection breaks; the pool replaces it by itself. */
  readonly onIdleError: (error: Error) => void
}

/**
 * The pool for whatever appends and for the hot reads. A statement may take 15 s and a transaction may sit idle for
 * 15 s; then the server ends it, so that one lost client holds no lock for long.
 */
export function openPool({ url, size = 10, onIdleError }: PoolOptions): Pool {
  const pool = new Pool({
    connectionString: url,
    max: size,
    application_name: 'bayledger',
    // Starting a parallel worker takes longer than any statement of ours runs.
    options: '-c max_parallel_workers_per_gather=0',
    connectionTimeoutMillis: 10_000,
    statement_timeout: 15_000,
    idle_in_transaction_session_timeout: 15_000,
    types: {
      getTypeParser: (oid, format) =>
        oid === OID_OF_DATE ? (text: string) => text : types.getTypeParser(oid, format),
    },
  })
  pool.on('error', onIdleError)
  // The pool listens to its idle connections only. One that breaks while it is out would end the whole process if
  // nobody listened; its query fails anyway.
  pool.on('connect', (client) => client.on('error', () => undefined))
  return pool
}
