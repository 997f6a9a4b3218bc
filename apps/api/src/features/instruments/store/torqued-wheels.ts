import type { TorquedWheel } from '@bayledger/contract/instruments'
import type { Pool } from 'pg'

type Row = Omit<TorquedWheel, 'torquedAt' | 'by'> & { torquedAt: Date; by: string | null }

/**
 * The last round of every wheel that was torqued or checked with a wrench on a day (UTC, as due days are compared) or since,
 * newest first. A tablet's clock and the server's both count, so that a clock that was wrong hides no wheel; a withdrawn round
 * is left out.
 */
export const listTorquedWheels = async (
  pool: Pool,
  shopId: string,
  instrumentId: string,
  since: string,
): Promise<Row[]> =>
  (
    await pool.query<Row>({
      name: 'torqued-wheels',
      text: `select * from (
          select distinct on (h.order_id, e.payload ->> 'wheel')
            h.order_id as "orderId", h.number as "orderNumber", e.payload ->> 'wheel' as wheel,
            e.written_at as "torquedAt", s.name as by,
            sum(c.clicks) over (partition by h.order_id, e.payload ->> 'wheel')::int as clicks,
            v.description as vehicle, v.plate, k.name as customer, k.may_call as "mayCall",
            case when k.may_call then k.phone end as telephone
          from wrench_cycles c
          join entries e on e.shop_id = c.shop_id and e.id = c.entry_id
          join order_heads h on h.shop_id = e.shop_id and h.order_id = e.order_id
          join vehicles brought on brought.shop_id = h.shop_id and brought.id = h.vehicle_id
          join vehicles v on v.shop_id = h.shop_id and v.id = coalesce(brought.survivor_id, brought.id)
          join customers named on named.shop_id = h.shop_id and named.id = h.customer_id
          join customers k on k.shop_id = h.shop_id and k.id = coalesce(named.survivor_id, named.id)
          left join staff s on s.shop_id = e.shop_id and s.id::text = e.written_by ->> 'staffId'
          where c.shop_id = $1 and c.instrument_id = $2 and greatest(e.written_at, e.received_at) >= $3::date
            and not exists (
              select 1 from entries x where x.shop_id = e.shop_id and x.order_id = e.order_id
                and x.kind = 'entry.struck' and x.payload ->> 'entryId' = e.id::text)
          order by h.order_id, e.payload ->> 'wheel', e.written_at desc
        ) as torqued
        order by "torquedAt" desc, "orderNumber", wheel`,
      values: [shopId, instrumentId, since],
    })
  ).rows
