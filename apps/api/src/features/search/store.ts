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
/** So many names are compared for each word, and so many with their vehicles, where no name begins as it was typed. */
const mostCompared = 400
const mostOwners = 120

/** Every kind is a range of one index, read in its order; nothing else is looked at however much there is. */
const candidatesByBeginning = `
  select w.place, w.kind, t.subject_id, t.token = w.beginning as is_exact, length(t.token) as length
  from (select kind, place, case when kind in ('name', 'model') then search_fold(beginning) else beginning end as beginning
    from unnest($2::text[], $3::text[]) with ordinality as w (kind, beginning, place)) as w,
  lateral (select subject_id, token from search_tokens
    where shop_id = $1 and kind = w.kind and token >= w.beginning and token < w.beginning || chr(1114111)
    order by token limit ${mostOfKind}) as t
  where w.beginning <> ''`

/** The names that begin with one of the words, in any of their orders. */
const namesByWords = (most: number) => `
  select distinct on (subject_id) subject_id, token, words
  from (select string_to_array(search_fold($2), ' ') as words) as typed,
  lateral (select subject_id, token from unnest(typed.words) as word, lateral (
    select subject_id, token from search_tokens
    where shop_id = $1 and kind = 'name' and token >= word and token < word || chr(1114111)
    order by token limit ${most}) as begun) as named`

/** Names that have all of the words as beginnings. */
const candidatesByAllWords = `
  select 1 as place, 'name' as kind, t.subject_id, false as is_exact, length(t.token) as length
  from (${namesByWords(mostCompared)}) as t
  where ' ' || t.token like all (select '% ' || word || '%' from unnest(t.words) as word)
  limit ${mostOfKind}`

/** Names that have them together with one of their vehicles: "muller ridge". */
const candidatesByOwnedVehicles = `
  select 1 as place, 'name' as kind, t.subject_id, false as is_exact, length(t.token) as length
  from (${namesByWords(mostOwners)}) as t
  where exists (select from (select description, plate from vehicles
      where shop_id = $1 and customer_id = any (array(select same_customer($1, t.subject_id))) limit ${mostOfKind}) as v
    where ' ' || t.token || ' ' || search_fold(concat_ws(' ', v.description, v.plate))
      like all (select '% ' || word || '%' from unnest(t.words) as word))
  limit ${mostOfKind}`

/** Each join is looked up row by row ("limit"), so that no plan reads a whole table for a handful of candidates. */
const hitsOf = (candidates: string) => `
  with candidates as materialized (${candidates}),
  found as (
    select f.*, h.order_id, v.id as vehicle_id, owner.id as found_customer_id
    from (select *, case when kind in ('name', 'phone') then subject_id end as customer_id,
      case when kind = 'order-number' then subject_id end as number_id from candidates) f
    left join lateral (
      select order_id, vehicle_id, customer_id from order_heads where shop_id = $1 and order_id = f.number_id limit 1
    ) h on true
    left join lateral (
      (select own.id, own.customer_id from same_customer($1, f.customer_id) as same (id)
        cross join lateral (select id, customer_id from vehicles
          where shop_id = $1 and customer_id = same.id and survivor_id is null limit ${mostOfKind}) as own
        where f.customer_id is not null)
      union all
      (select kept.id, kept.customer_id from (select coalesce(survivor_id, id) as id from vehicles
          where f.customer_id is null and shop_id = $1 and id = coalesce(h.vehicle_id, f.subject_id) limit 1) as brought
        cross join lateral (select id, customer_id from vehicles where shop_id = $1 and id = brought.id limit 1) as kept)
    ) v on true
    left join lateral (
      select coalesce(survivor_id, id) as id from customers
      where shop_id = $1 and id = coalesce(h.customer_id, v.customer_id, f.customer_id) limit 1
    ) owner on true
  ),
  hits as (
    select distinct on (order_id, vehicle_id, found_customer_id) * from found where found_customer_id is not null
    order by order_id, vehicle_id, found_customer_id, is_exact desc, place, length
  )
  select case when f.order_id is not null then 'order' when f.vehicle_id is not null then 'vehicle' else 'customer' end as kind,
    coalesce(f.order_id, live.order_id) as "orderId", live.number as "orderNumber", live.is_open as "isOpen", live.agenda,
    f.vehicle_id as "vehicleId", f.found_customer_id as "customerId", c.name as "customerName",
    v.description as "vehicleDescription", v.plate, f.kind as matched
  from hits f
  cross join lateral (select name from customers where shop_id = $1 and id = f.found_customer_id limit 1) c
  left join lateral (select description, plate from vehicles where shop_id = $1 and id = f.vehicle_id limit 1) v on true
  left join lateral (
    (select order_id, number, is_open, agenda from order_heads where shop_id = $1 and order_id = f.order_id limit 1)
    union all
    (select order_id, number, is_open, agenda from order_heads
      where f.order_id is null and shop_id = $1 and vehicle_id = any (array(select same_vehicle($1, f.vehicle_id)))
        and is_open order by opened_at desc limit 1)
  ) live on true
  order by f.is_exact desc, f.place, live.is_open desc nulls last, f.length, c.name, f.found_customer_id, f.vehicle_id
  limit ${mostHits}`

/** What begins as it was typed, likelier kinds first and open orders before others. */
export const findByBeginning = async (
  pool: Pool,
  shopId: string,
  wanted: readonly Wanted[],
): Promise<FoundRow[]> => {
  const { rows } = await pool.query<FoundRow>({
    name: 'search',
    text: hitsOf(candidatesByBeginning),
    values: [shopId, wanted.map(({ kind }) => kind), wanted.map(({ beginning }) => beginning)],
  })
  return rows
}

/** Words in any order, each the beginning of a word of the name, else of the name or of a vehicle. */
export const findByAllWords = async (pool: Pool, shopId: string, typed: string): Promise<FoundRow[]> => {
  const values = [shopId, typed]
  const named = await pool.query<FoundRow>({
    name: 'search-names',
    text: hitsOf(candidatesByAllWords),
    values,
  })
  if (named.rows.length > 0) return named.rows
  const owners = await pool.query<FoundRow>({
    name: 'search-owners',
    text: hitsOf(candidatesByOwnedVehicles),
    values,
  })
  return owners.rows
}
