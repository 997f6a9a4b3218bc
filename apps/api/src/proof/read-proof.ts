import type { SideKind } from '@bayledger/ledger/side-kinds'
import type { Pool } from 'pg'

/** An order's head as it is stored, in the forms in which it is computed. */
export type StoredHead = {
  readonly orderId: string
  readonly number: string
  readonly seq: number
  readonly hash: string
  readonly openedAt: Date
  readonly locationId: string
  readonly customerId: string
  readonly vehicleId: string
  readonly promisedAt: Date | null
  readonly waitsHere: boolean
  readonly assignedTo: string | null
  readonly isOpen: boolean
  readonly sealed: boolean
  readonly agenda: unknown
  readonly left: unknown
  readonly figures: unknown
}

const headColumns = `order_id as "orderId", number, seq, hash, opened_at as "openedAt", location_id as "locationId",
  customer_id as "customerId", vehicle_id as "vehicleId", promised_at as "promisedAt", waits_here as "waitsHere", assigned_to as "assignedTo",
  is_open as "isOpen", sealed, agenda, left_to_do as "left", figures`

/** Every order that has a head or an entry; one whose head is gone is still named by the number that it was given. */
export const listOrderNumbers = async (
  pool: Pool,
  shopId: string,
): Promise<{ orderId: string; number: string }[]> => {
  const { rows } = await pool.query<{ orderId: string; number: string }>(
    `select order_id as "orderId", number from order_heads where shop_id = $1
     union all
     select order_id, coalesce(min(given ->> 'orderNumber') filter (where seq = 1), order_id::text) from entries e
       where shop_id = $1
         and not exists (select from order_heads h where h.shop_id = e.shop_id and h.order_id = e.order_id)
       group by order_id
     order by 2`,
    [shopId],
  )
  return rows
}

export const findHead = async (pool: Pool, shopId: string, orderId: string): Promise<StoredHead | null> => {
  const { rows } = await pool.query<StoredHead>(
    `select ${headColumns} from order_heads where shop_id = $1 and order_id = $2`,
    [shopId, orderId],
  )
  return rows[0] ?? null
}

export type StoredSide = {
  readonly side: SideKind
  readonly digest: string
  readonly salt: Uint8Array
  readonly text: string
}

/** The sides of an order's entries, whatever order they were first written with. */
export const listStoredSides = async (
  pool: Pool,
  shopId: string,
  digests: readonly string[],
): Promise<StoredSide[]> => {
  if (digests.length === 0) return []
  const { rows } = await pool.query<StoredSide>(sidesText, [shopId, digests])
  return rows
}

const sideTables: Readonly<Record<SideKind, string>> = {
  personal: 'personal_texts',
  contact: 'contact_sides',
  money: 'money_sides',
  shown: 'shown_sides',
}
const sidesText = Object.entries(sideTables)
  .map(
    ([side, table]) =>
      `select '${side}' as side, digest, salt, text from ${table} where shop_id = $1 and digest = any ($2::text[])`,
  )
  .join(' union all ')

/** Which of these digests an erasure names. */
export const listErased = async (
  pool: Pool,
  shopId: string,
  digests: readonly string[],
): Promise<ReadonlySet<string>> => {
  if (digests.length === 0) return new Set()
  const { rows } = await pool.query<{ digest: string }>(
    `select distinct d as digest from erasures, unnest(digests) as d where shop_id = $1 and d = any ($2::text[])`,
    [shopId, digests],
  )
  return new Set(rows.map(({ digest }) => digest))
}

export type SecondPersonProofRow = {
  readonly tokenHash: string
  readonly staffId: string
  readonly orderId: string
  readonly entryId: string
  readonly kind: string
  readonly digest: string
}

/** What people agreed to with their PIN, by the digest of the token that the PIN earned. */
export const listSecondPersonProofs = async (
  pool: Pool,
  shopId: string,
  tokenHashes: readonly string[],
): Promise<SecondPersonProofRow[]> => {
  if (tokenHashes.length === 0) return []
  const { rows } = await pool.query<SecondPersonProofRow>(
    `select token_hash as "tokenHash", staff_id as "staffId", order_id as "orderId", entry_id as "entryId", kind, digest
      from second_person_proofs where shop_id = $1 and token_hash = any ($2::text[])`,
    [shopId, tokenHashes],
  )
  return rows
}

/** Who verified which figure of a sheet with their PIN, by the digest of the figure. */
export const listFigureProofs = async (
  pool: Pool,
  shopId: string,
  digests: readonly string[],
): Promise<{ readonly staffId: string; readonly digest: string }[]> => {
  if (digests.length === 0) return []
  const { rows } = await pool.query<{ staffId: string; digest: string }>(
    `select staff_id as "staffId", digest from second_person_proofs
      where shop_id = $1 and kind = 'sheet-figure' and digest = any ($2::text[])`,
    [shopId, digests],
  )
  return rows
}

export type StoredReportRow = {
  readonly number: string
  readonly entryId: string
  readonly sha256: string
  readonly sealedAt: Date
}

export const listReportRows = async (
  pool: Pool,
  shopId: string,
  orderId: string,
): Promise<StoredReportRow[]> => {
  const { rows } = await pool.query<StoredReportRow>(
    `select number, entry_id as "entryId", sha256, sealed_at as "sealedAt" from sealed_reports
      where shop_id = $1 and order_id = $2`,
    [shopId, orderId],
  )
  return rows
}

/** The digest of the copy that is shown of each of these photos that has arrived. */
export const listReceivedPhotos = async (
  pool: Pool,
  shopId: string,
  digests: readonly string[],
): Promise<ReadonlyMap<string, string>> => {
  if (digests.length === 0) return new Map()
  const { rows } = await pool.query<{ digest: string; view: string }>(
    'select digest, view_digest as view from received_photos where shop_id = $1 and digest = any ($2::text[])',
    [shopId, digests],
  )
  return new Map(rows.map(({ digest, view }) => [digest, view]))
}

/** Which of these files are there, and whether each has the digest that it is kept under. */
export const listSoundBlobs = async (
  pool: Pool,
  shopId: string,
  digests: readonly string[],
): Promise<ReadonlyMap<string, boolean>> => {
  if (digests.length === 0) return new Map()
  const { rows } = await pool.query<{ digest: string; sound: boolean }>(
    `select sha256 as digest, encode(sha256(bytes), 'hex') = sha256 as sound from blobs
      where shop_id = $1 and sha256 = any ($2::text[])`,
    [shopId, digests],
  )
  return new Map(rows.map(({ digest, sound }) => [digest, sound]))
}

/** What an order's entries are counted into, one line a row. */
export const listCountedRows = async (pool: Pool, shopId: string, orderId: string): Promise<string[]> => {
  const { rows } = await pool.query<{ line: string }>(
    `with own as (select id from entries where shop_id = $1 and order_id = $2)
     select concat_ws(' ', 'sensor', entry_id, vehicle_id, wheel, sensor_id, how) as line from seen_sensors
       where shop_id = $1 and order_id = $2
     union all
     select concat_ws(' ', 'clicks', entry_id, instrument_id, clicks) from wrench_cycles
       where shop_id = $1 and entry_id in (select id from own)
     union all
     select concat_ws(' ', 'part', m.entry_id, m.quantity, m.kind, s.part_number) from stock_movements m
       join stock_items s on s.shop_id = m.shop_id and s.id = m.stock_item_id
       where m.shop_id = $1 and m.entry_id in (select id from own)`,
    [shopId, orderId],
  )
  return rows.map(({ line }) => line)
}

/** Since when a shop stocks each of these parts at one of these places. */
export const listStockedParts = async (
  pool: Pool,
  shopId: string,
  partNumbers: readonly string[],
  locationIds: readonly string[],
): Promise<ReadonlyMap<string, Date>> => {
  if (partNumbers.length === 0) return new Map()
  const { rows } = await pool.query<{ partNumber: string; since: Date }>(
    `select part_number as "partNumber", max(created_at) as since from stock_items
      where shop_id = $1 and part_number = any ($2::text[]) and location_id = any ($3::uuid[]) group by part_number`,
    [shopId, partNumbers, locationIds],
  )
  return new Map(rows.map(({ partNumber, since }) => [partNumber, since]))
}

/** Lines of the stock list whose pieces on hand are not the sum of what moved them. */
export const listWrongStock = async (
  pool: Pool,
  shopId: string,
): Promise<{ partNumber: string; place: string; onHand: number; moved: number }[]> => {
  const { rows } = await pool.query<{ partNumber: string; place: string; onHand: number; moved: number }>(
    `select s.part_number as "partNumber", l.name as place, s.on_hand as "onHand", m.moved
     from stock_items s join locations l on l.shop_id = s.shop_id and l.id = s.location_id
     cross join lateral (select (
       coalesce((select sum(quantity) from stock_movements where shop_id = s.shop_id and stock_item_id = s.id), 0)
       + coalesce((select sum(quantity) from stock_changes where shop_id = s.shop_id and stock_item_id = s.id), 0)
     )::int as moved) m
     where s.shop_id = $1 and s.on_hand <> m.moved order by s.part_number, l.name`,
    [shopId],
  )
  return rows
}

/** Rows that count an entry which is not there: what they are of, and the entry. */
export const listStrayCounts = async (
  pool: Pool,
  shopId: string,
): Promise<{ readonly counted: 'clicks' | 'part'; readonly entryId: string }[]> => {
  const stray = (counted: string, table: string) =>
    `select '${counted}' as counted, c.entry_id as "entryId" from ${table} c where c.shop_id = $1
       and not exists (select from entries e where e.shop_id = c.shop_id and e.id = c.entry_id)`
  const { rows } = await pool.query<{ counted: 'clicks' | 'part'; entryId: string }>(
    `${stray('clicks', 'wrench_cycles')} union all ${stray('part', 'stock_movements')} order by 2`,
    [shopId],
  )
  return rows
}

/** The public keys of these tablets, by the tablet's id. */
export const listDeviceKeys = async (
  pool: Pool,
  shopId: string,
  deviceIds: readonly string[],
): Promise<ReadonlyMap<string, string>> => {
  const { rows } = await pool.query<{ deviceId: string; publicKey: string }>(
    `select device_id as "deviceId", public_key as "publicKey" from device_keys
     where shop_id = $1 and device_id = any ($2::uuid[])`,
    [shopId, deviceIds],
  )
  return new Map(rows.map(({ deviceId, publicKey }) => [deviceId, publicKey]))
}
