import type { Pool } from 'pg'

export type ShopCounts = {
  readonly openOrders: number
  readonly messagesWaiting: number
  /** Since the oldest message that is due was due, in seconds; 0 where none is. */
  readonly oldestMessageSeconds: number
}

/** What an operator watches over in the database. One query of two indexed tables; rejects when the database is away. */
export const countShops = async (pool: Pool): Promise<ShopCounts> => {
  const { rows } = await pool.query<{ open: number; waiting: number; oldest: number }>(
    `select (select count(*)::int from order_heads where is_open) as open,
            count(*)::int as waiting,
            coalesce(extract(epoch from now() - min(due_at) filter (where due_at < now())), 0)::float8 as oldest
       from messages where state = 'waiting'`,
  )
  const [{ open = 0, waiting = 0, oldest = 0 } = {}] = rows
  return { openOrders: open, messagesWaiting: waiting, oldestMessageSeconds: oldest }
}
