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
