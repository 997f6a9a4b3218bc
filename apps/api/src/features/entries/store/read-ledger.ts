import type { Entry } from '@bayledger/ledger/entry'
import type { Pool } from 'pg'

type Row = {
  id: string
  order_id: string
  seq: number
  kind: string
  version: number
  payload: unknown
  given: unknown
  rests_on: string[]
  written_by: unknown
  device_id: string | null
  written_at: Date
  received_at: Date
  previous_hash: string
  hash: string
}

const columns = `id, order_id, seq, kind, version, payload, given, rests_on, written_by, device_id, written_at,
  received_at, previous_hash, hash`

/** Entries of an order after the one numbered `after`, in order. */
export const listEntriesAfter = async (
  pool: Pool,
  shopId: string,
  orderId: string,
  after: number,
): Promise<Entry[]> => {
  const { rows } = await pool.query<Row>({
    name: 'entries-after',
    text: `select ${columns} from entries where shop_id = $1 and order_id = $2 and seq > $3 order by seq`,
    values: [shopId, orderId, after],
  })
  return rows.map((row) => entryOf(shopId, row))
}

/** The same, with what the order's head says is its newest entry, both as of one moment. */
export const readLedgerAfter = async (
  pool: Pool,
  shopId: string,
  orderId: string,
  after: number,
): Promise<{ readonly entries: readonly Entry[]; readonly head: Pick<Entry, 'seq' | 'hash'> | null }> => {
  type Found = (Row | { readonly id: null }) & { head_seq: number | null; head_hash: string | null }
  const { rows } = await pool.query<Found>({
    name: 'ledger-after',
    text: `select h.seq as head_seq, h.hash as head_hash, e.*
      from (select $1::uuid as shop_id, $2::uuid as order_id) o
      left join order_heads h on h.shop_id = o.shop_id and h.order_id = o.order_id
      left join (select ${columns} from entries where shop_id = $1 and order_id = $2 and seq > $3) e on true
      order by e.seq`,
    values: [shopId, orderId, after],
  })
  const { head_seq: seq = null, head_hash: hash = null } = rows[0] ?? {}
  return {
    entries: rows.flatMap((row) => (row.id === null ? [] : [entryOf(shopId, row)])),
    head: seq === null || hash === null ? null : { seq, hash },
  }
}

export const findEntryById = async (pool: Pool, shopId: string, id: string): Promise<Entry | null> => {
  const { rows } = await pool.query<Row>({
    name: 'entry-by-id',
    text: `select ${columns} from entries where shop_id = $1 and id = $2`,
    values: [shopId, id],
  })
  return rows[0] ? entryOf(shopId, rows[0]) : null
}

/** What was admitted is of its kind's schema: the row is trusted, and its hash shows if it should not be. */
const entryOf = (shopId: string, row: Row): Entry =>
  ({
    id: row.id,
    shopId,
    orderId: row.order_id,
    seq: row.seq,
    kind: row.kind,
    version: row.version,
    payload: row.payload,
    given: row.given,
    restsOn: row.rests_on,
    writtenBy: row.written_by,
    deviceId: row.device_id,
    writtenAt: row.written_at.toISOString(),
    receivedAt: row.received_at.toISOString(),
    previousHash: row.previous_hash,
    hash: row.hash,
  }) as Entry
