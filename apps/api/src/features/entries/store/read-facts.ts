import type { ProvenSecondPerson } from '@bayledger/ledger/admit/facts'
import { digestOf } from '@bayledger/ledger/digests'
import type { Pool } from 'pg'

/** What only some kinds of entry need to know of the world outside their order. */
export type EntryFacts = {
  /** Whose PIN earned these tokens, by the id of the entry that they agreed to. */
  readonly secondPersons: ReadonlyMap<string, ProvenSecondPerson>
  /** The public key of the tablet that vouches for a second person's PIN; `null`: none does, or it has none. */
  readonly tabletKey: string | null
  /** Of the ids that the entry rests on, those that were refused. */
  readonly refusedIds: ReadonlySet<string>
  /** Of these sensor IDs, those last seen on another vehicle, by when the server received it: a tablet's clock may be wrong. */
  readonly idsOnOtherVehicles: ReadonlySet<string>
  /** The digest of this sheet, as it is on file. */
  readonly sheetsOnFile: ReadonlySet<string>
  /** Clicks of these wrenches so far. */
  readonly cycles: ReadonlyMap<string, number>
}

export type AskedFacts = {
  readonly restsOn: readonly string[]
  readonly vehicleId: string | null
  /** What this order itself heard does not count; `null`: everything does. */
  readonly apartFromOrder: string | null
  readonly sensorIds: readonly string[]
  readonly wrenchIds: readonly string[]
  /** Digests of the tokens in the entry. */
  readonly secondPersonTokens: readonly string[]
  /** The tablet that vouches for the PIN of the entry's second person. */
  readonly vouchingTablet: string | null
  readonly sheet: { readonly sheetId: string; readonly version: number } | null
}

export const noEntryFacts: EntryFacts = {
  secondPersons: new Map(),
  tabletKey: null,
  refusedIds: new Set(),
  sheetsOnFile: new Set(),
  idsOnOtherVehicles: new Set(),
  cycles: new Map(),
}

/** Reads what one entry needs, in one prepared statement; no statement where it needs nothing. */
export const readEntryFacts = async (pool: Pool, shopId: string, asked: AskedFacts): Promise<EntryFacts> => {
  const { restsOn, sensorIds, wrenchIds, vehicleId, apartFromOrder } = asked
  const { secondPersonTokens, vouchingTablet, sheet } = asked
  const count = restsOn.length + sensorIds.length + wrenchIds.length + secondPersonTokens.length
  if (count === 0 && sheet === null && vouchingTablet === null) return noEntryFacts
  const { rows } = await pool.query<{
    second_persons: (Omit<ProvenSecondPerson, 'until'> & { until: string })[] | null
    tablet_key: string | null
    refused: string[] | null
    sheet: object | null
    ids_elsewhere: string[] | null
    cycles: { id: string; cycles: number }[] | null
  }>({
    name: 'entry-facts',
    text: `select
      (select json_agg(json_build_object('staffId', staff_id, 'orderId', order_id, 'entryId', entry_id, 'kind', kind,
        'digest', digest, 'until', expires_at)) from second_person_proofs
        where shop_id = $1 and token_hash = any ($6::text[])) as second_persons,
      (select public_key from device_keys where shop_id = $1 and device_id = $9) as tablet_key,
      (select body from sheet_versions where shop_id = $1 and sheet_id = $7 and version = $8) as sheet,
      (select array_agg(id::text) from refused_entries where shop_id = $1 and id = any ($2::uuid[])) as refused,
      (select array_agg(sensor_id order by sensor_id) from (
        select distinct on (s.sensor_id) s.sensor_id, s.vehicle_id
        from seen_sensors s join entries e on e.shop_id = s.shop_id and e.id = s.entry_id
        where s.shop_id = $1 and s.sensor_id = any ($4::text[]) and ($10::uuid is null or e.order_id <> $10)
        order by s.sensor_id, e.received_at desc, s.entry_id desc) last_seen
        where $3::uuid is not null and vehicle_id <> all (array(select same_vehicle($1, $3)))) as ids_elsewhere,
      (select json_agg(json_build_object('id', id, 'cycles', cycles)) from instruments
        where shop_id = $1 and id = any ($5::uuid[])) as cycles`,
    values: [
      shopId,
      restsOn,
      vehicleId,
      sensorIds,
      wrenchIds,
      secondPersonTokens,
      sheet?.sheetId ?? null,
      sheet?.version ?? null,
      vouchingTablet,
      apartFromOrder,
    ],
  })
  const [row] = rows
  return {
    secondPersons: new Map(
      (row?.second_persons ?? []).map((proven) => [
        proven.entryId,
        { ...proven, until: new Date(proven.until).toISOString() },
      ]),
    ),
    tabletKey: row?.tablet_key ?? null,
    refusedIds: new Set(row?.refused ?? []),
    sheetsOnFile: new Set(row?.sheet && sheet ? [digestOf({ ...row.sheet, ...sheet })] : []),
    idsOnOtherVehicles: new Set(row?.ids_elsewhere ?? []),
    cycles: new Map((row?.cycles ?? []).map(({ id, cycles }) => [id, cycles])),
  }
}

/** The number that the next order gets; the append takes it only if it is still the next one then. */
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
