import type { Pool } from 'pg'

/** A vehicle's last visits say all that bears on this one; more would only be read again and again. */
const mostVisits = 20

/** The finished orders of the same vehicle from before this one, newest first. */
export const listEarlierOrders = async (pool: Pool, shopId: string, orderId: string): Promise<string[]> => {
  const { rows } = await pool.query<{ order_id: string }>({
    name: 'earlier-orders',
    text: `select earlier.order_id
      from order_heads present
      cross join lateral same_vehicle(present.shop_id, present.vehicle_id) as own (id)
      join order_heads earlier on earlier.shop_id = present.shop_id and earlier.vehicle_id = own.id
      where present.shop_id = $1 and present.order_id = $2
        and earlier.opened_at < present.opened_at and not earlier.is_open
      order by earlier.opened_at desc, earlier.order_id limit $3`,
    values: [shopId, orderId, mostVisits],
  })
  return rows.map((row) => row.order_id)
}
