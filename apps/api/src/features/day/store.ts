import type { Pool } from 'pg'

type Place = {
  readonly shopId: string
  readonly locationId: string
  readonly day: string
  readonly timeZone: string
}

/** The orders of a place at which something was paid or corrected on a day of its clock. */
export const listPaidOrders = async (
  pool: Pool,
  { shopId, locationId, day, timeZone }: Place,
): Promise<string[]> => {
  const { rows } = await pool.query<{ order_id: string }>(
    `select distinct e.order_id from entries e
     join order_heads h on h.shop_id = e.shop_id and h.order_id = e.order_id and h.location_id = $2
     where e.shop_id = $1 and e.kind in ('payment.noted', 'payment.corrected')
       and e.received_at >= ($3::date)::timestamp at time zone $4
       and e.received_at < ($3::date + 1)::timestamp at time zone $4`,
    [shopId, locationId, day, timeZone],
  )
  return rows.map(({ order_id }) => order_id)
}

/** So long after an order ended without any payment it is looked at again. */
const lookedForDays = 90

/**
 * The orders of a place that are open, that ended on a day of its clock, or that ended within three months before it and of
 * which nobody has noted a payment: a debt is not over with its day.
 */
export const listUnsettled = async (pool: Pool, { shopId, locationId, day, timeZone }: Place) => {
  const { rows } = await pool.query<{ orderId: string; customer: string }>(
    `select h.order_id as "orderId", c.name as customer from order_heads h
     join customers named on named.shop_id = h.shop_id and named.id = h.customer_id
     join customers c on c.shop_id = h.shop_id and c.id = coalesce(named.survivor_id, named.id)
     where h.shop_id = $1 and h.location_id = $2 and (h.is_open
       or (h.ended_at >= ($3::date - $5::int)::timestamp at time zone $4
         and h.ended_at < ($3::date + 1)::timestamp at time zone $4
         and (h.ended_at >= ($3::date)::timestamp at time zone $4 or not exists (
           select from entries e
           where e.shop_id = h.shop_id and e.order_id = h.order_id and e.kind = 'payment.noted'))))
     order by h.opened_at`,
    [shopId, locationId, day, timeZone, lookedForDays],
  )
  return rows
}
