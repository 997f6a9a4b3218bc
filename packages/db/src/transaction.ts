import type { Pool, PoolClient } from 'pg'

/**
 * Runs `work` in one transaction on one connection: all of it or none. For statements through `pg`; what goes
 * through Prisma uses `client.$transaction`, and no transaction is half of each.
 */
export async function inTransaction<T>(pool: Pool, work: (tx: PoolClient) => Promise<T>): Promise<T> {
  const tx = await pool.connect()
  let broken: Error | undefined
  try {
    await tx.query('begin')
    const result = await work(tx)
    await tx.query('commit')
    return result
  } catch (error) {
    await tx.query('rollback').catch((reason: Error) => {
      broken = reason
    })
    throw error
  } finally {
    // A connection that cannot even roll back is thrown away, not handed to the next.
    tx.release(broken)
  }
}
