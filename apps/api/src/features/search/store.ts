import type { Pool } from 'pg'
import type { AgendaStage } from '../entries/service/moves-at.ts'
import type { TokenKind, Wanted } from './policy.ts'

export type FoundRow = {
  readonly kind: 'order' | 'vehicle' | 'customer'
  /** The order that was found, or the vehicle's open one. */
  readonly orderId: string | null
  readonly orderNumber: string | null
  readonly isOpen: boolean | null
  readonly agenda: readonly AgendaStage[] | null
  readonly vehicleId: string | null
  readonly customerId: string
  readonly customerName: string
  readonly vehicleDescription: string | null
  readonly plate: string | null
  readonly matched: TokenKind
}

/** So many of each kind are looked at and so many are shown in all; typing more narrows them. */
const mostOfKind = 40
const mostHits = 20
/** Once so many likelier ones are found, less likely ones are not read: merged records leave half of them at worst. */
const enough = 2 * mostHits
/** So many names are compared for each word, and so many with their vehicles, where no name begins as it was typed. */
const mostCompared = 400
const mostOwners = 120

/** A range of one index, read in its order: nothing else is looked at however much there is. */
const beginning = (kind: string, text: string, most: number) => `
  select subject_id, token from search_tokens
  where shop_id = $1 and kind = ${kind} and token >= ${text} and token < ${text} || chr(1114111)
  order by token limit ${most}`

/** The names that begin with one of the words, in any of their orders. */
const namesByWords = (most: number) => `
  select distinct on (begun.subject_id) begun.subject_id, begun.token, typed.patterns
  from typed cross join unnest(typed.words) as word cross join lateral (${beginning("'name'", 'word', most)}) as begun
  order by begun.subject_id, begun.token`

/** The record that holds now. Few are merged, so that the index of those that are is small and stays in memory. */
const survivorOf = (
  table: 'customers' | 'vehicles',
  id: string,
) => `coalesce((select survivor_id from ${table}
  where shop_id = $1 and id = ${id} and coalesce(survivor_id, id) <> id limit 1), ${id})`

/** A record that holds now and those that were merged into it. */
const recordsOf = (table: 'customers' | 'vehicles', id: string) =>
  `(select ${id} as id union all select id from ${table} where shop_id = $1 and survivor_id = ${id}) as same`

/**
 * One statement: what begins as it was typed; if nothing does, names that have all of the words as beginnings; if none has,
 * names that have them together with one of their vehicles ("muller ridge"). Until the hits to show are chosen, indexes alone
 * are read. Each join is looked up row by row ("limit"), so that no plan reads a whole table for a handful of candidates.
 * What was typed is read by a "select" of its own, so that PostgreSQL estimates the same whatever it is and keeps one plan:
 * making one takes longer than running it.
 */
const statement = `
  with wanted as materialized (
    select kind, place, case when kind in ('name', 'model') then search_fold(beginning) else beginning end as beginning
    from unnest((select $2::text[]), (select $3::text[])) with ordinality as w (kind, beginning, place)
  ),
  begun as materialized (
    select w.place, w.kind, t.subject_id, t.token, t.token = w.beginning as is_exact
    from wanted as w cross join lateral (${beginning('w.kind', 'w.beginning', mostOfKind)}) as t
    where w.beginning <> ''
  ),
  typed as materialized (
    select words, array(select '% ' || word || '%' from unnest(words) as word) as patterns
    from (select string_to_array(search_fold((select $4::text)), ' ') as words) as folded
    where (select $4::text) is not null and not exists (select from begun)
  ),
  named as materialized (
    select 1::bigint as place, 'name' as kind, n.subject_id, n.token, false as is_exact
    from (${namesByWords(mostCompared)}) as n where ' ' || n.token like all (n.patterns)
    limit ${mostOfKind}
  ),
  owning as materialized (
    select 1::bigint as place, 'name' as kind, n.subject_id, n.token, false as is_exact
    from (${namesByWords(mostOwners)}) as n
    cross join lateral (select ${survivorOf('customers', 'n.subject_id')} as id) as holder
    where not exists (select from named) and exists (
      select from (select search_fold(concat_ws(' ', description, plate)) as folded
        from ${recordsOf('customers', 'holder.id')} cross join lateral (
          select description, plate from vehicles where shop_id = $1 and customer_id = same.id limit ${mostOfKind}) as own
        limit ${mostOfKind}) as v
      where ' ' || n.token || ' ' || v.folded like all (n.patterns))
    limit ${mostOfKind}
  ),
  candidates as (
    select *, count(*) over (order by is_exact desc, place
      range between unbounded preceding and current row exclude group) as likelier
    from (
      select distinct on (subject, subject_id) *
      from (
        select *, case when kind in ('name', 'phone') then 'customer' when kind = 'order-number' then 'order' else 'vehicle' end
          as subject
        from (table begun union all table named union all table owning) as each_of
      ) as with_subject
      order by subject, subject_id, is_exact desc, place, token
    ) as once
  ),
  found as (
    select c.is_exact, c.place, c.kind, c.token, h.order_id, h.is_open, v.id as vehicle_id,
      case when v.id is null then holder.id end as customer_id
    from candidates as c
    left join lateral (
      select order_id, vehicle_id, is_open from order_heads
      where c.subject = 'order' and shop_id = $1 and order_id = c.subject_id limit 1
    ) as h on true
    left join lateral (
      select ${survivorOf('customers', 'c.subject_id')} as id where c.subject = 'customer'
    ) as holder on true
    left join lateral (
      (select own.id from ${recordsOf('customers', 'holder.id')} cross join lateral (
          select id from vehicles where shop_id = $1 and customer_id = same.id and survivor_id is null limit ${mostOfKind}) as own
        where c.subject = 'customer')
      union all
      (select ${survivorOf('vehicles', 'known.id')}
        from (select coalesce(h.vehicle_id, c.subject_id) as id where c.subject <> 'customer') as known)
    ) as v on true
    where c.likelier < ${enough}
  ),
  hits as (
    select distinct on (order_id, vehicle_id, customer_id) * from found
    order by order_id, vehicle_id, customer_id, is_exact desc, place, length(token), token
  ),
  shown as materialized (
    select f.*, coalesce(f.order_id, live.order_id) as head_id
    from hits as f
    left join lateral (
      select o.order_id, true as is_open
      from ${recordsOf('vehicles', 'f.vehicle_id')} cross join lateral (
        select order_id, opened_at from order_heads
        where shop_id = $1 and vehicle_id = same.id and is_open order by opened_at desc limit 1) as o
      where f.order_id is null
      order by o.opened_at desc limit 1
    ) as live on true
    order by f.is_exact desc, f.place, coalesce(f.is_open, live.is_open) desc nulls last, length(f.token), f.token,
      f.vehicle_id, f.customer_id
    limit ${mostHits}
  )
  select case when s.order_id is not null then 'order' when s.vehicle_id is not null then 'vehicle' else 'customer' end as kind,
    s.head_id as "orderId", h.number as "orderNumber", h.is_open as "isOpen", h.agenda,
    s.vehicle_id as "vehicleId", c.id as "customerId", c.name as "customerName",
    v.description as "vehicleDescription", v.plate, s.kind as matched
  from shown as s
  left join lateral (
    select customer_id, number, is_open, agenda from order_heads where shop_id = $1 and order_id = s.head_id limit 1
  ) as h on true
  left join lateral (
    select customer_id, description, plate from vehicles where shop_id = $1 and id = s.vehicle_id limit 1
  ) as v on true
  cross join lateral (
    select coalesce(case when s.order_id is not null then h.customer_id end, v.customer_id, s.customer_id) as id
  ) as owner
  cross join lateral (
    select id, name from customers where shop_id = $1 and id = ${survivorOf('customers', 'owner.id')} limit 1
  ) as c
  order by s.is_exact desc, s.place, h.is_open desc nulls last, length(s.token), c.name, c.id, s.vehicle_id`

/**
 * What begins as it was typed, likelier kinds first and open orders before others. If nothing does, the customers to whom all
 * of `words` belong, each the beginning of a word of the name or of a vehicle; null to leave that out.
 */
export const find = async (
  pool: Pool,
  shopId: string,
  wanted: readonly Wanted[],
  words: string | null,
): Promise<FoundRow[]> => {
  const { rows } = await pool.query<FoundRow>({
    name: 'search',
    text: statement,
    values: [shopId, wanted.map(({ kind }) => kind), wanted.map((one) => one.beginning), words],
  })
  return rows
}
