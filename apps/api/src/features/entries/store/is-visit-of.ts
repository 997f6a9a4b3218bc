import type { Pool } from 'pg'

/** Whether this order is one of this vehicle, under whichever of its records. */
export const isVisitOf = async (
  pool: Pool,
  shopId: string,
  orderId: string,
  vehicleId: string,
): Promise<boolean> => {
  const { rows } = await pool.query<{ is: boolean }>({
    name: 'is-visit-of',
    text: `select exists (select from order_heads where shop_id = $1 and order_id = $2
      and vehicle_id = any (array(select same_vehicle($1, $3)))) as is`,
    values: [shopId, orderId, vehicleId],
  })
  return rows[0]?.is === true
}
