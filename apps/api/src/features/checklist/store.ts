import { bayRoles } from '@bayledger/ledger/role'
import type { Deps } from '../../deps.ts'

type Counts = {
  readonly working: number
  readonly bay: number
  readonly wrenches: number
  readonly gauges: number
  readonly prices_version: number
  readonly tablets: number
  readonly has_orders: boolean
}

const usable = `
  select i.kind from instruments i
  join locations l on l.shop_id = i.shop_id and l.id = i.location_id
  where i.shop_id = $1 and not i.quarantined
    and (i.due_on is null or i.due_on >= ($2::timestamptz at time zone l.time_zone)::date)`

/** Each is read when it is asked, so that the list is right whoever changed what, and where. */
export const countShop = async ({ pool, shopId, clock }: Deps): Promise<Counts> => {
  const { rows } = await pool.query<Counts>(
    `with usable as (${usable}), working as (select roles, pin_hash from staff where shop_id = $1 and active)
     select
       (select count(*)::int from working) as working,
       (select count(*)::int from working where pin_hash is not null and roles && $3::text[]) as bay,
       (select count(*)::int from usable where kind = 'wrench') as wrenches,
       (select count(*)::int from usable where kind = 'gauge') as gauges,
       (select coalesce(max(version), 0)::int from setting_versions
         where shop_id = $1 and kind = 'prices' and location_id is null) as prices_version,
       (select count(*)::int from devices where shop_id = $1 and revoked_at is null) as tablets,
       exists (select from order_heads where shop_id = $1) as has_orders`,
    [shopId, clock.now(), bayRoles],
  )
  const [counts] = rows
  if (!counts) throw new Error('counting gave no row')
  return counts
}
