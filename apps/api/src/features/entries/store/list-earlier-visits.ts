import type { Pool } from 'pg'

/** More than so many visits without one reading of the odometer are not looked through. */
const mostVisits = 20

/** Orders of a vehicle from before this one, open ones too, newest first; all of them where this one is not written yet. */
export const listEarlierVisits = async (
  pool: Pool,
  shopId: string,
  { vehicleId, orderId }: { readonly vehicleId: string; readonly orderId: string | null },
): Promise<string[]> => {
  const { rows } = await pool.query<{ order_id: string }>({
    name: 'earlier-visits',
    text: `select earlier.order_id from order_heads earlier
      left join order_heads present on present.shop_id = earlier.shop_id and present.order_id = $3
      where earlier.shop_id = $1 and earlier.vehicle_id = any (array(select same_vehicle($1, $2))) and earlier.order_id is distinct from $3
        and (present.order_id is null or earlier.opened_at < present.opened_at)
      order by earlier.opened_at desc, earlier.order_id limit $4`,
    values: [shopId, vehicleId, orderId, mostVisits],
  })
  return rows.map((row) => row.order_id)
}
