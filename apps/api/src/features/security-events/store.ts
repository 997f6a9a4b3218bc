import type { SecurityEventKind } from '@bayledger/contract/security-events'
import type { Deps } from '../../deps.ts'

export type EventRow = {
  readonly id: string
  readonly kind: SecurityEventKind
  readonly count: number
  readonly firstAt: Date
  readonly lastAt: Date
  readonly by: string | null
  readonly about: string | null
  readonly tablet: string | null
  readonly address: string | null
  readonly details: Record<string, unknown>
}

/**
 * The events of a range of days, newest first; failures that are alike on one day are one row. `staffId`: only those that this
 * person did or that were about them.
 */
export const listEvents = async (
  { pool, shopId }: Deps,
  asked: {
    readonly from: string
    readonly to: string
    readonly staffId: string | null
    readonly most: number
  },
): Promise<EventRow[]> => {
  const { rows } = await pool.query<EventRow>({
    name: 'security-events',
    text: `with zone as (
        select coalesce((select time_zone from locations where shop_id = $1 order by id limit 1), 'UTC') as name
      ), found as (
        select e.*, (e.at at time zone zone.name)::date as day,
          case when e.kind in ('sign-in-failed', 'pin-failed', 'password-failed', 'passkey-failed', 'owner-code-failed', 'wait-began') then '' else e.id::text end as apart
        from security_events e, zone
        where e.shop_id = $1 and ($4::uuid is null or e.staff_id = $4 or e.about_id = $4)
          and e.at >= ($2::date)::timestamp at time zone zone.name
          and e.at < ($3::date + 1)::timestamp at time zone zone.name
      ), grouped as (
        select (array_agg(id order by at desc, id desc))[1] as id, kind, count(*)::int as count, min(at) as first_at, max(at) as last_at,
          staff_id, about_id, device_id, address, (array_agg(details order by at desc, id desc))[1] as details
        from found group by day, apart, kind, staff_id, about_id, device_id, address
      )
      select g.id, g.kind, g.count, g.first_at as "firstAt", g.last_at as "lastAt", who.name as by,
        coalesce(person.name, tablet.name) as about, place.name as tablet, g.address, g.details
      from grouped g
      left join staff who on who.shop_id = $1 and who.id = g.staff_id
      left join staff person on person.shop_id = $1 and person.id = g.about_id
      left join devices tablet on tablet.shop_id = $1 and tablet.id = g.about_id
      left join devices place on place.shop_id = $1 and place.id = g.device_id
      order by g.last_at desc, g.id desc limit $5`,
    values: [shopId, asked.from, asked.to, asked.staffId, asked.most],
  })
  return rows
}
