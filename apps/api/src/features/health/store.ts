import type { Pool } from 'pg'
import { tryFullDisk } from '../../core/full-disk.ts'

/** One round trip to the database; rejects when it does not answer, or has no room for what is written. */
export const pingDatabase = async (pool: Pool): Promise<void> => {
  await pool.query('select 1')
  await tryFullDisk(pool)
}
