import type { SideKind } from '@bayledger/ledger/side-kinds'
import type { Pool } from 'pg'

/** An order's head as it is stored, in the forms in which it is computed. */
export type StoredHead = {
  readonly orderId: string
  readonly number: string
  readonly seq: number
  readonly hash: string
  readonly locationId: string
  readonly customerId: string
  readonly vehicleId: string
  readonly promisedAt: Date | null
  readonly waitsHere: boolean
  readonly assignedTo: string | null
  readonly isOpen: boolean
  readonly sealed: boolean
  readonly agenda: unknown
}

const headColumns = `order_id as "orderId", number, seq, hash, location_id as "locationId", customer_id as "customerId",
  vehicle_id as "vehicleId", promised_at as "promisedAt", waits_here as "waitsHere", assigned_to as "assignedTo",
  is_open as "isOpen", sealed, agenda`

export const listOrderNumbers = async (
  pool: Pool,
  shopId: string,
): Promise<{ orderId: string; number: string }[]> => {
  const { rows } = await pool.query<{ orderId: string; number: string }>(
    'select order_id as "orderId", number from order_heads where shop_id = $1 order by number',
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

export type StoredReportRow = { readonly number: string; readonly entryId: string; readonly sha256: string }

export const listReportRows = async (
  pool: Pool,
  shopId: string,
  orderId: string,
): Promise<StoredReportRow[]> => {
  const { rows } = await pool.query<StoredReportRow>(
    'select number, entry_id as "entryId", sha256 from sealed_reports where shop_id = $1 and order_id = $2',
    [shopId, orderId],
  )
  return rows
}

export const findBytes = async (pool: Pool, shopId: string, sha256: string): Promise<Uint8Array | null> => {
  const { rows } = await pool.query<{ bytes: Uint8Array }>(
    'select bytes from blobs where shop_id = $1 and sha256 = $2',
    [shopId, sha256],
  )
  return rows[0]?.bytes ?? null
}

/** What an order's entries are counted into, one line a row, in one order. */
export const listCountedRows = async (pool: Pool, shopId: string, orderId: string): Promise<string[]> => {
  const { rows } = await pool.query<{ line: string }>(
    `select concat_ws(' ', 'sensor', entry_id, wheel, sensor_id, how) as line from seen_sensors
       where shop_id = $1 and order_id = $2
     union all
     select concat_ws(' ', 'clicks', c.entry_id, c.instrument_id, c.clicks) from wrench_cycles c
       join entries e on e.shop_id = c.shop_id and e.id = c.entry_id where c.shop_id = $1 and e.order_id = $2
     order by 1`,
    [shopId, orderId],
  )
  return rows.map(({ line }) => line)
}
