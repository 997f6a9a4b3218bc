import type { Pool } from 'pg'

/** One round trip to the database; rejects when it does not answer. */
export const pingDatabase = async (pool: Pool): Promise<void> => {
  await pool.query('select 1')
}
