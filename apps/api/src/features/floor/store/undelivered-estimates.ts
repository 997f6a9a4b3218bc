import type { Pool } from 'pg'

/**
 * Which of these orders have an estimate whose newest message came to nothing, with when; not where the customer was given a
 * link since. The head of an order says the same by the same rule (`customerWaitWords` of the desk).
 */
export const listUndelivered = async (
  pool: Pool,
  shopId: string,
  orderIds: readonly string[],
): Promise<ReadonlyMap<string, Date>> => {
  if (orderIds.length === 0) return new Map()
  const { rows } = await pool.query<{ readonly orderId: string; readonly at: Date }>(
    `select m.order_id as "orderId", m.at
      from (select distinct on (order_id) order_id, state, coalesce(ended_at, created_at) as at
        from messages
        where shop_id = $1 and order_id = any ($2) and purpose = 'estimate' and state <> 'withdrawn'
        order by order_id, created_at desc, id desc) m
      where m.state not in ('waiting', 'handed-over') and not exists (
        select from customer_links l
        where l.shop_id = $1 and l.order_id = m.order_id and l.revoked_at is null and l.created_at > m.at)`,
    [shopId, orderIds],
  )
  return new Map(rows.map(({ orderId, at }) => [orderId, at]))
}
