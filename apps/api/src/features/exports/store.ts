import type { Author } from '@bayledger/ledger/entry'
import type { Kind, PayloadOf } from '@bayledger/ledger/registry'
import { upcast } from '@bayledger/ledger/upcast'
import type { Pool } from 'pg'

/** Days of the clock of each order's own place; `locationId` null: all places. */
export type Range = {
  readonly shopId: string
  readonly from: string
  readonly to: string
  readonly locationId: string | null
}

export type Place = { readonly number: string; readonly place: string; readonly timeZone: string }
/** What a file says of an entry, its payload in the present version of its kind. */
export type ExportedEntry<K extends Kind = Kind> = Place &
  {
    readonly [Name in K]: {
      readonly orderId: string
      readonly kind: Name
      readonly version: number
      readonly payload: PayloadOf<Name>
      readonly writtenBy: Author
      readonly writtenAt: Date
      readonly receivedAt: Date
      readonly isWithdrawn: boolean
    }
  }[K]

/** So many rows are in memory at once. */
const rowsAtOnce = 500

const begins = `($2::date)::timestamp at time zone l.time_zone`
const ends = `($3::date + 1)::timestamp at time zone l.time_zone`
const heads = `order_heads h join locations l on l.shop_id = h.shop_id and l.id = h.location_id`

/**
 * Reads a query's rows in portions through a cursor, however many there are. Whoever takes them may be slow: the connection
 * waits for at most five minutes at a time.
 */
async function* inPortions<Row extends object>(
  pool: Pool,
  query: string,
  values: readonly unknown[],
): AsyncGenerator<Row> {
  const client = await pool.connect()
  try {
    await client.query('begin read only')
    await client.query(
      "set local idle_in_transaction_session_timeout = '300s'; set local statement_timeout = '60s'",
    )
    await client.query(`declare exported no scroll cursor for ${query}`, [...values])
    for (;;) {
      const { rows } = await client.query<Row>(`fetch ${rowsAtOnce} from exported`)
      yield* rows
      if (rows.length < rowsAtOnce) return
    }
  } finally {
    await client.query('rollback').then(
      () => client.release(),
      () => client.release(true),
    )
  }
}

/** Entries of some kinds that the server received within the range, oldest first. */
export async function* readEntries<const K extends Kind>(
  pool: Pool,
  { shopId, from, to, locationId }: Range,
  kinds: readonly K[],
): AsyncGenerator<ExportedEntry<K>> {
  const rows = inPortions<ExportedEntry<K>>(
    pool,
    `select h.number, l.name as place, l.time_zone as "timeZone", e.order_id as "orderId", e.kind, e.version, e.payload,
        e.written_by as "writtenBy", e.written_at as "writtenAt", e.received_at as "receivedAt", exists (
          select from entries s where s.shop_id = e.shop_id and s.order_id = e.order_id
            and s.kind = 'entry.struck' and s.payload->>'entryId' = e.id::text) as "isWithdrawn"
      from ${heads} join entries e on e.shop_id = h.shop_id and e.order_id = h.order_id
      where h.shop_id = $1 and ($4::uuid is null or h.location_id = $4)
        and h.opened_at < ${ends} and (h.ended_at is null or h.ended_at >= ${begins})
        and e.kind = any($5) and e.received_at >= ${begins} and e.received_at < ${ends}
      order by e.received_at, e.order_id, e.seq`,
    [shopId, from, to, locationId, kinds],
  )
  for await (const row of rows) yield upcast(row)
}

export type ExportedOrder = Place & {
  readonly openedAt: Date
  readonly promisedAt: Date | null
  readonly endedAt: Date | null
  readonly waitsHere: boolean
  readonly isOpen: boolean
  readonly sealed: boolean
  readonly vehicle: string
  readonly plate: string | null
  readonly vin: string | null
  readonly customer: string
  readonly phone: string | null
  readonly email: string | null
}

/** Orders that were opened within the range, oldest first. */
export const readOrders = (
  pool: Pool,
  { shopId, from, to, locationId }: Range,
): AsyncGenerator<ExportedOrder> =>
  inPortions<ExportedOrder>(
    pool,
    `select h.number, l.name as place, l.time_zone as "timeZone", h.opened_at as "openedAt",
        h.promised_at as "promisedAt", h.ended_at as "endedAt", h.waits_here as "waitsHere", h.is_open as "isOpen",
        h.sealed, v.description as vehicle, v.plate, v.vin, c.name as customer, c.phone, c.email
      from ${heads}
      join vehicles brought on brought.shop_id = h.shop_id and brought.id = h.vehicle_id
      join vehicles v on v.shop_id = h.shop_id and v.id = coalesce(brought.survivor_id, brought.id)
      join customers named on named.shop_id = h.shop_id and named.id = h.customer_id
      join customers c on c.shop_id = h.shop_id and c.id = coalesce(named.survivor_id, named.id)
      where h.shop_id = $1 and ($4::uuid is null or h.location_id = $4)
        and h.opened_at >= ${begins} and h.opened_at < ${ends}
      order by h.opened_at, h.order_id`,
    [shopId, from, to, locationId],
  )
