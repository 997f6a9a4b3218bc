import type { LeftToDo } from '@bayledger/ledger/questions/left-to-do'
import type { WeekHours } from '@bayledger/reckoning/ready/open-hours'
import type { StepTime } from '@bayledger/reckoning/ready/step-seconds'
import type { Pool } from 'pg'

export type PlaceNow = {
  readonly locationId: string
  readonly hours: WeekHours
  readonly timeZone: string
  /**
   * People who were signed in on a tablet of the place within the last two hours: a tablet that nobody touches locks itself and ends
   * the session, so that few are signed in at one moment. While nobody was, and for an hour after the first sign-in, as in the
   * morning: the shop's technicians, at most one a bay, where those are more.
   */
  readonly people: number
}

export type JobNow = { readonly orderId: string; readonly locationId: string; readonly left: LeftToDo }

/** The places of a shop, and its open orders with a plan in the order in which the bay takes them. */
export const readPlacesAndJobs = async (
  pool: Pool,
  shopId: string,
  now: Date,
): Promise<{ readonly places: readonly PlaceNow[]; readonly jobs: readonly JobNow[] }> => {
  const { rows } = await pool.query<{ places: PlaceNow[] | null; jobs: JobNow[] | null }>({
    name: 'ready',
    text: `select
      (select json_agg(json_build_object('locationId', l.id, 'hours', l.hours, 'timeZone', l.time_zone, 'people',
          case when seen.people > 0 and seen.first_at < $2::timestamptz - interval '1 hour' then seen.people
            else greatest(seen.people, usual.people) end))
        from locations l
        cross join lateral (
          select min(s.created_at) as first_at,
              count(distinct s.staff_id)
                filter (where coalesce(s.ended_at, $2::timestamptz) > $2::timestamptz - interval '2 hours') as people
            from devices d join sessions s on s.shop_id = d.shop_id and s.device_id = d.id
            where d.shop_id = l.shop_id and d.location_id = l.id and d.revoked_at is null
              and s.expires_at > $2::timestamptz) seen
        cross join lateral (
          select least(count(*), l.bays) as people from staff t
            where t.shop_id = l.shop_id and t.active and t.roles && array['technician', 'lead']) usual
        where l.shop_id = $1) as places,
      (select json_agg(json_build_object('orderId', h.order_id, 'locationId', h.location_id, 'left', h.left_to_do)
          order by not h.waits_here, h.promised_at nulls last, h.opened_at, h.order_id)
        from order_heads h where h.shop_id = $1 and h.is_open and h.left_to_do is not null) as jobs`,
    values: [shopId, now],
  })
  return { places: rows[0]?.places ?? [], jobs: rows[0]?.jobs ?? [] }
}

/** So many orders that are over are learned from: more than hold the newest forty of any usual step. */
const learnedFrom = 300

export type StepsOfOrder = { readonly locationId: string; readonly steps: readonly StepTime[] }

/** How long the steps of the orders took that ended last, newest first. */
export const listStepTimes = async (pool: Pool, shopId: string): Promise<StepsOfOrder[]> => {
  const { rows } = await pool.query<StepsOfOrder>({
    name: 'step-times',
    text: `select location_id as "locationId", figures -> 'steps' as steps from order_heads
      where shop_id = $1 and ended_at is not null and figures is not null order by ended_at desc limit $2`,
    values: [shopId, learnedFrom],
  })
  return rows
}
