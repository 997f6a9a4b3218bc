import type { SearchHit } from '@bayledger/contract/search'
import type { Pool } from 'pg'
import { likeText } from '../../core/like-text.ts'
import type { Wanted } from './policy.ts'

/**
 * One statement over all that can be found, each part through an index of its own, best kind of match first.
 * 20 hits are enough for a search box; typing more narrows them.
 */
export const findHits = async (pool: Pool, shopId: string, wanted: Wanted): Promise<SearchHit[]> => {
  const { rows } = await pool.query<SearchHit>({
    name: 'search',
    text: `
      with found as (
        select 1 as rank, 'order-number' as matched, 'order' as kind, h.order_id, h.number, h.vehicle_id, h.customer_id
        from order_heads h
        where h.shop_id = $1 and h.number in ($2, 'T-' || $2, regexp_replace($2, '^([A-Z]+)', '\\1-'))
        union all
        select 2, case when v.plate_normalized like '%' || upper($3) || '%' then 'plate' else 'vin' end, 'vehicle',
          null, null, v.id, v.customer_id
        from vehicles v
        where v.shop_id = $1 and v.search_text like '%' || $3 || '%'
          and (v.plate_normalized like '%' || upper($3) || '%' or lower(v.vin) like '%' || $3)
        union all
        select 3, 'phone', 'customer', null, null, null, c.id
        from customers c where c.shop_id = $1 and c.search_text like '%' || $4
        union all
        select 4, 'name', 'customer', null, null, null, c.id
        from customers c where c.shop_id = $1 and c.search_text like all ($5::text[])
        union all
        select 5, 'sensor-id', 'order', h.order_id, h.number, h.vehicle_id, h.customer_id
        from seen_sensors s join order_heads h on h.shop_id = s.shop_id and h.order_id = s.order_id
        where s.shop_id = $1 and s.sensor_id like '%' || $6
      ), hits as (
        select distinct on (kind, order_id, vehicle_id, customer_id) * from found
        order by kind, order_id, vehicle_id, customer_id, rank
      )
      select f.kind, f.order_id as "orderId", f.number as "orderNumber", f.vehicle_id as "vehicleId",
        f.customer_id as "customerId", c.name as "customerName", v.description as "vehicleDescription", v.plate, f.matched
      from hits f
      join customers c on c.shop_id = $1 and c.id = f.customer_id
      left join vehicles v on v.shop_id = $1 and v.id = f.vehicle_id
      order by f.rank, f.number desc nulls last, c.name, f.customer_id
      limit 20`,
    values: [
      shopId,
      wanted.orderNumber,
      wanted.mark === null ? null : likeText(wanted.mark),
      wanted.phoneEnd,
      wanted.words?.map((word) => `%${likeText(word)}%`) ?? null,
      wanted.sensorEnd,
    ],
  })
  return rows
}
