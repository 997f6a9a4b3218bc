import type { JobFigures } from '@bayledger/ledger/questions/job-figures'
import type { Pool } from 'pg'

/** An order that is over, with its figures. */
export type EndedOrder = {
  readonly orderId: string
  readonly number: string
  readonly locationId: string
  readonly endedAt: Date
  readonly figures: JobFigures
}

const columns = `order_id as "orderId", number, location_id as "locationId", ended_at as "endedAt", figures`

type Asked = { readonly shopId: string; readonly locationId: string | null }

/** Orders that ended from one instant until before another, newest first; found by when they ended. */
export const listEnded = async (
  pool: Pool,
  { shopId, locationId, from, until }: Asked & { readonly from: Date; readonly until: Date },
): Promise<EndedOrder[]> => {
  const { rows } = await pool.query<EndedOrder>(
    `select ${columns} from order_heads
     where shop_id = $1 and ended_at >= $2 and ended_at < $3 and ($4::uuid is null or location_id = $4) and figures is not null
     order by ended_at desc`,
    [shopId, from, until, locationId],
  )
  return rows
}

/** The orders that ended last before an instant, newest first: what was known then. */
export const listEndedBefore = async (
  pool: Pool,
  { shopId, locationId, before, count }: Asked & { readonly before: Date; readonly count: number },
): Promise<EndedOrder[]> => {
  const { rows } = await pool.query<EndedOrder>(
    `select ${columns} from order_heads
     where shop_id = $1 and ended_at < $2 and ($3::uuid is null or location_id = $3) and figures is not null
     order by ended_at desc limit $4`,
    [shopId, before, locationId, count],
  )
  return rows
}

/** What was fitted under these IDs, as listed: by which order, which knows lot and month. */
export const listFittedIn = async (
  pool: Pool,
  shopId: string,
  sensorIds: readonly string[],
): Promise<
  { readonly sensorId: string; readonly endedAt: Date | null; readonly figures: JobFigures | null }[]
> => {
  if (sensorIds.length === 0) return []
  const { rows } = await pool.query<{ sensorId: string; endedAt: Date | null; figures: JobFigures | null }>(
    `select s.sensor_id as "sensorId", h.ended_at as "endedAt", h.figures from seen_sensors s
     join order_heads h on h.shop_id = s.shop_id and h.order_id = s.order_id
     where s.shop_id = $1 and s.sensor_id = any ($2) and s.how = 'fitted'`,
    [shopId, sensorIds],
  )
  return rows
}
