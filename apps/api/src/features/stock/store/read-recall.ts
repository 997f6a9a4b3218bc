import type { Pool } from 'pg'

/** One part of a lot that was drawn for a vehicle, or a kit that was fitted there, with the vehicle's owner of today. */
export type RecalledRow = {
  readonly orderId: string
  readonly orderNumber: string
  readonly drawnAt: Date
  readonly isKit: boolean
  readonly wheel: string | null
  readonly partNumber: string
  readonly lot: string
  readonly vehicleId: string
  readonly description: string
  readonly plate: string | null
  readonly customerId: string
  readonly name: string
  readonly phone: string | null
  readonly email: string | null
  readonly mayCall: boolean
  readonly mayText: boolean
  readonly mayEmail: boolean
  readonly sensorId: string | null
  readonly heardAt: Date | null
  readonly heardWheel: string | null
  readonly heardVehicleId: string | null
}

/** The entries that name a lot: a part as it was drawn, and a kit as it was fitted. Each has an index of its own. */
const ofLot = `
  select e.*, false as is_kit, e.payload ->> 'partNumber' as part, e.payload ->> 'lot' as lot
  from entries e
  where e.shop_id = $1 and e.kind = 'part.drawn' and lot_key(e.payload ->> 'lot') = lot_key($2)
  union all
  select e.*, true, e.payload ->> 'kitPart', e.payload ->> 'kitLot'
  from entries e
  where e.shop_id = $1 and e.kind = 'sensor.fitted' and lot_key(e.payload ->> 'kitLot') = lot_key($2)`

const notWithdrawn = `
  not exists (select from entries x where x.shop_id = d.shop_id and x.order_id = d.order_id
    and x.kind = 'entry.struck' and x.payload ->> 'entryId' = d.id::text)`

/**
 * Every part and every kit of a lot that was not withdrawn, through indexes over the entries themselves: nothing is kept
 * beside them that could differ. A kit's sensor is the one that it was fitted with, a part's the one that was fitted last
 * at the wheel in that order; it was heard last wherever its ID was read or fitted last.
 */
export const findDrawn = async (pool: Pool, shopId: string, lot: string): Promise<RecalledRow[]> => {
  const { rows } = await pool.query<RecalledRow>({
    name: 'recall-lot',
    text: `
      select d.order_id as "orderId", h.number as "orderNumber", d.received_at as "drawnAt", d.is_kit as "isKit",
        d.payload ->> 'wheel' as wheel, d.part as "partNumber", btrim(d.lot) as lot, v.id as "vehicleId", v.description,
        v.plate, c.id as "customerId", c.name, c.phone, c.email, coalesce(said.may_call, c.may_call) as "mayCall",
        coalesce(said.may_text, c.may_text) as "mayText", coalesce(said.may_email, c.may_email) as "mayEmail", fitted.sensor_id as "sensorId", heard.received_at as "heardAt",
        heard.wheel as "heardWheel", coalesce(bearer.survivor_id, bearer.id) as "heardVehicleId"
      from (${ofLot}) d
      join order_heads h on h.shop_id = d.shop_id and h.order_id = d.order_id
      join vehicles brought on brought.shop_id = h.shop_id and brought.id = h.vehicle_id
      join vehicles v on v.shop_id = h.shop_id and v.id = coalesce(brought.survivor_id, brought.id)
      join customers named on named.shop_id = v.shop_id and named.id = v.customer_id
      join customers c on c.shop_id = v.shop_id and c.id = coalesce(named.survivor_id, named.id)
      left join lateral (
        select bool_or(allowed) filter (where channel = 'call') as may_call,
          bool_or(allowed) filter (where channel = 'text') as may_text,
          bool_or(allowed) filter (where channel = 'email') as may_email
        from (
          select distinct on (channel) channel, allowed from message_choices
          where shop_id = $1 and customer_id in (select same_customer($1, c.id)) and purpose = 'recall'
          order by channel, made_at desc, id desc
        ) newest
      ) said on true
      left join lateral (
        select s.sensor_id from seen_sensors s join entries e on e.shop_id = s.shop_id and e.id = s.entry_id
        where s.shop_id = d.shop_id and s.order_id = d.order_id and s.wheel = d.payload ->> 'wheel'
          and s.how = 'fitted' and e.seq >= d.seq
        -- A kit is of the sensor that it was fitted with.
        order by (d.is_kit and e.id = d.id) desc, e.seq desc limit 1
      ) fitted on true
      left join lateral (
        select s.wheel, s.vehicle_id, e.received_at
        from seen_sensors s join entries e on e.shop_id = s.shop_id and e.id = s.entry_id
        where s.shop_id = d.shop_id and s.sensor_id = fitted.sensor_id order by e.received_at desc, e.seq desc limit 1
      ) heard on true
      left join vehicles bearer on bearer.shop_id = $1 and bearer.id = heard.vehicle_id
      where ${notWithdrawn}
      order by c.name, v.id, d.received_at, d.seq`,
    values: [shopId, lot],
  })
  return rows
}

export type ShelfRow = {
  readonly locationId: string
  readonly partNumber: string
  readonly came: number
  readonly left: number
}

/** What of a lot was written down as coming to each place and as leaving it, by part. */
export const findOnShelves = async (pool: Pool, shopId: string, lot: string): Promise<ShelfRow[]> => {
  const { rows } = await pool.query<ShelfRow>({
    name: 'recall-shelves',
    text: `
      with moved as (
        select c.stock_item_id, c.quantity from stock_changes c
        where c.shop_id = $1 and c.lot is not null and lot_key(c.lot) = lot_key($2)
        union all
        select m.stock_item_id, m.quantity from (${ofLot}) d
        join stock_movements m on m.shop_id = d.shop_id and m.entry_id = d.id
        where ${notWithdrawn}
      )
      select s.location_id as "locationId", s.part_number as "partNumber",
        coalesce(sum(m.quantity) filter (where m.quantity > 0), 0)::int as came,
        coalesce(-sum(m.quantity) filter (where m.quantity < 0), 0)::int as left
      from moved m join stock_items s on s.shop_id = $1 and s.id = m.stock_item_id
      group by s.location_id, s.part_number order by s.part_number, s.location_id`,
    values: [shopId, lot],
  })
  return rows
}
