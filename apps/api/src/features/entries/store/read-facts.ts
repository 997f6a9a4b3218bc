import type { WrenchFacts } from '@bayledger/ledger/admit/facts'
import type { Role } from '@bayledger/ledger/role'
import type { Pool } from 'pg'

export type StoredFacts = {
  readonly staff: ReadonlyMap<string, readonly Role[]>
  readonly gauges: ReadonlySet<string>
  readonly wrenches: ReadonlyMap<string, WrenchFacts>
  readonly refusedIds: ReadonlySet<string>
  readonly idsOnOtherVehicles: ReadonlySet<string>
  readonly heldBackParts: ReadonlyMap<string, string>
  readonly secondPersonRequired: boolean
}

type Row = {
  staff: { id: string; roles: Role[] }[] | null
  instruments:
    | {
        id: string
        kind: string
        due_on: string | null
        cycles: number
        quarantined: boolean
        body: Record<string, unknown>
      }[]
    | null
  refused: string[] | null
  ids_elsewhere: string[] | null
  held_back: { number: string; why: string }[] | null
  second_person: boolean | null
}

/** Everything outside the order that admitting an entry asks for, in one prepared statement. */
export const readFacts = async (
  pool: Pool,
  shopId: string,
  asked: {
    readonly restsOn: readonly string[]
    readonly vehicleId: string | null
    readonly locationId: string | null
    readonly sensorIds: readonly string[]
  },
): Promise<StoredFacts> => {
  const { rows } = await pool.query<Row>({
    name: 'facts',
    text: `select
      (select json_agg(json_build_object('id', id, 'roles', roles)) from staff where shop_id = $1 and active) as staff,
      (select json_agg(json_build_object('id', id, 'kind', kind, 'due_on', due_on, 'cycles', cycles,
        'quarantined', quarantined, 'body', body)) from instruments where shop_id = $1) as instruments,
      (select array_agg(id::text) from refused_entries where shop_id = $1 and id = any ($2::uuid[])) as refused,
      (select array_agg(sensor_id order by sensor_id) from (
        select distinct on (sensor_id) sensor_id, vehicle_id from seen_sensors
        where shop_id = $1 and sensor_id = any ($4::text[]) order by sensor_id, entry_id desc) last_seen
        where vehicle_id <> $3) as ids_elsewhere,
      (select json_agg(json_build_object('number', part_number, 'why', family ->> 'blocked')) from stock_items
        where shop_id = $1 and location_id = $5 and family ->> 'blocked' is not null) as held_back,
      (select (law_profile ->> 'secondPersonForTorque')::boolean from locations
        where shop_id = $1 and id = $5) as second_person`,
    values: [shopId, asked.restsOn, asked.vehicleId, asked.sensorIds, asked.locationId],
  })
  const row = rows[0]
  const instruments = row?.instruments ?? []
  return {
    staff: new Map((row?.staff ?? []).map(({ id, roles }) => [id, roles])),
    gauges: new Set(
      instruments.filter(({ kind, quarantined }) => kind === 'gauge' && !quarantined).map(({ id }) => id),
    ),
    wrenches: new Map(
      instruments
        .filter(({ kind }) => kind === 'wrench')
        .map(({ id, due_on, cycles, quarantined, body }) => [
          id,
          {
            dueOn: due_on ?? '',
            cycles,
            quarantined,
            rangeLow: Number(body.rangeLow),
            rangeHigh: Number(body.rangeHigh),
            rangeUnit: body.rangeUnit as WrenchFacts['rangeUnit'],
          },
        ]),
    ),
    refusedIds: new Set(row?.refused ?? []),
    idsOnOtherVehicles: new Set(row?.ids_elsewhere ?? []),
    heldBackParts: new Map((row?.held_back ?? []).map(({ number, why }) => [number, why])),
    secondPersonRequired: row?.second_person ?? true,
  }
}

/** The number that the next order gets, as it stands; the append takes it only if it still stands so. */
export const peekOrderNumber = async (
  pool: Pool,
  shopId: string,
): Promise<{ readonly series: string; readonly next: number }> => {
  const { rows } = await pool.query<{ series: string; next: number }>({
    name: 'peek-order-number',
    text: 'select series, next from order_numbers where shop_id = $1 order by series limit 1',
    values: [shopId],
  })
  const [row] = rows
  if (!row) throw new Error('this shop has no series of order numbers')
  return row
}
