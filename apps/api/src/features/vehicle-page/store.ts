import type { Pool } from 'pg'
import type { AgendaStage } from '../entries/service/moves-at.ts'

/** As many of a vehicle's visits as its page shows. */
const mostVisits = 30

export type VisitRow = {
  readonly orderId: string
  readonly number: string
  readonly openedAt: Date
  readonly isOpen: boolean
  readonly agenda: readonly AgendaStage[]
}

/** The orders of a vehicle, newest first. */
export const listVisits = async (pool: Pool, shopId: string, vehicleId: string): Promise<VisitRow[]> => {
  const { rows } = await pool.query<VisitRow>({
    name: 'visits',
    text: `select order_id as "orderId", number, opened_at as "openedAt", is_open as "isOpen", agenda from order_heads
      where shop_id = $1 and vehicle_id = any (array(select same_vehicle($1, $2))) order by opened_at desc, order_id limit $3`,
    values: [shopId, vehicleId, mostVisits],
  })
  return rows
}
