import type { Pool } from 'pg'

/** The databases that refused a write for want of room and have taken none since, as far as this process has heard. */
const full = new WeakSet<Pool>()

export const noteFullDisk = (pool: Pool): void => {
  full.add(pool)
}

/**
 * Rejects with what the database says while its disk is full. After it was, three megabytes are written and dropped to find out
 * whether it still is; at other times nothing is written.
 */
export const tryFullDisk = async (pool: Pool): Promise<void> => {
  if (!full.has(pool)) return
  const client = await pool.connect()
  try {
    await client.query('begin')
    await client.query(
      "create temporary table room_on_disk on commit drop as select repeat('x', 1000) from generate_series(1, 3000)",
    )
    full.delete(pool)
  } finally {
    await client.query('rollback').finally(() => client.release())
  }
}
