import { inTransaction } from '@bayledger/db/transaction'
import type { Entry } from '@bayledger/ledger/entry'
import { canonicalText } from '@bayledger/ledger/hash-chain'
import type { SideKind } from '@bayledger/ledger/side-kinds'
import type { Pool } from 'pg'
import type { HeadProjection, RowProjection } from '../service/project-entries.ts'

/** A side that came with an entry, to be kept in the table of its kind. */
export type SideToKeep = {
  readonly side: SideKind
  readonly digest: string
  readonly salt: Uint8Array
  readonly text: string
}

export type Write = {
  readonly shopId: string
  readonly orderId: string
  /** The head that was read: nothing is written unless it is still that one. */
  readonly after: number
  readonly entries: readonly Entry[]
  readonly head: HeadProjection
  readonly rows: RowProjection
  readonly sides: readonly SideToKeep[]
  readonly opening: {
    readonly number: string
    readonly takes: { series: string; next: number } | null
  } | null
}

/**
 * Advances the head and writes entries with everything that follows from them, in one statement: all of it or, when
 * the head has moved or an id is taken, nothing (`false`).
 */
export const writeEntries = async (pool: Pool, write: Write): Promise<boolean> => {
  const { opening } = write
  if (!opening) {
    const { rowCount } = await pool.query({ name: 'append', text: appendText, values: values(write) })
    return rowCount === write.entries.length
  }
  return inTransaction(pool, async (tx) => {
    if (opening.takes) {
      const { rowCount } = await tx.query({
        name: 'take-order-number',
        text: 'update order_numbers set next = next + 1 where shop_id = $1 and series = $2 and next = $3',
        values: [write.shopId, opening.takes.series, opening.takes.next],
      })
      if (rowCount !== 1) return false
    }
    const { rowCount } = await tx.query({
      name: 'open-order',
      text: openText,
      values: [...values(write), opening.number, write.head.customerId],
    })
    if (rowCount !== write.entries.length) throw new HeadMoved()
    return true
  }).catch((error: unknown) => {
    if (error instanceof HeadMoved) return false
    throw error
  })
}

class HeadMoved extends Error {}

const advanceHead = `update order_heads set seq = $4, hash = $5, location_id = $6, promised_at = $7, waits_here = $8,
    assigned_to = $9, is_open = $10, sealed = $11, agenda = $12::json, updated_at = $13
  where shop_id = $1 and order_id = $2 and seq = $3 and vehicle_id = $40
    and not exists (select 1 from entries where shop_id = $1 and id = any ($14::uuid[]))
  returning order_id`

const insertHead = `insert into order_heads (shop_id, order_id, seq, hash, location_id, promised_at, waits_here,
    assigned_to, is_open, sealed, agenda, updated_at, opened_at, vehicle_id, number, customer_id)
  select $1, $2, $4, $5, $6, $7, $8, $9, $10, $11, $12::json, $13, $13, $40, $45, $46
  where $3 = 0
  on conflict do nothing returning order_id`

const keepSides = (table: string, side: SideKind): string => `
  insert into ${table} (shop_id, digest, order_id, salt, text, created_at)
  select $1, digest, order_id, salt, text, $13 from side where side.side = '${side}' on conflict do nothing`

const rest = `entry as (
  insert into entries (shop_id, order_id, id, seq, kind, version, payload, given, written_by, rests_on, device_id,
    written_at, received_at, previous_hash, hash)
  select $1, head.order_id, id, seq, kind, version, payload::json, given::json, written_by::json, rests_on::uuid[],
    device_id, written_at, received_at, previous_hash, hash
  from head, unnest($14::uuid[], $15::int[], $16::text[], $17::int[], $18::text[], $19::text[], $20::text[],
    $21::text[], $22::uuid[], $23::timestamptz[], $24::timestamptz[], $25::text[], $26::text[])
    as e (id, seq, kind, version, payload, given, written_by, rests_on, device_id, written_at, received_at,
      previous_hash, hash)
  returning id
), side as (
  select head.order_id, s.* from head, unnest($27::text[], $28::bytea[], $29::text[], $44::text[])
    as s (digest, salt, text, side)
), personal as (${keepSides('personal_texts', 'personal')}
), contact as (${keepSides('contact_sides', 'contact')}
), money as (${keepSides('money_sides', 'money')}
), shown as (${keepSides('shown_sides', 'shown')}
), used as (
  insert into wrench_cycles (shop_id, entry_id, line, instrument_id, clicks)
  select $1, entry_id, 0, instrument_id, clicks from head, unnest($30::uuid[], $31::uuid[], $32::int[])
    as c (entry_id, instrument_id, clicks)
), worn as (
  update instruments i set cycles = i.cycles + c.clicks
  from head, unnest($31::uuid[], $32::int[]) as c (instrument_id, clicks)
  where i.shop_id = $1 and i.id = c.instrument_id
), taken as (
  update stock_items s set on_hand = s.on_hand + p.quantity
  from head, unnest($33::uuid[], $34::text[], $35::int[]) as p (entry_id, part_number, quantity)
  where s.shop_id = $1 and s.location_id = $6 and s.part_number = p.part_number
  returning p.entry_id, s.id, p.quantity
), moved as (
  insert into stock_movements (shop_id, entry_id, line, stock_item_id, quantity, kind)
  select $1, entry_id, 0, id, quantity, case when quantity < 0 then 'drawn' else 'withdrawn' end from taken
), seen as (
  insert into seen_sensors (shop_id, entry_id, order_id, vehicle_id, wheel, sensor_id, how)
  select $1, entry_id, head.order_id, $40, wheel, sensor_id, how
  from head, unnest($36::uuid[], $37::text[], $38::text[], $39::text[]) as s (entry_id, wheel, sensor_id, how)
), report as (
  insert into sealed_reports (shop_id, number, order_id, entry_id, sha256, sealed_at)
  select $1, number, head.order_id, entry_id, sha256, $13
  from head, unnest($41::uuid[], $42::text[], $43::text[]) as r (entry_id, number, sha256)
)
select id from entry`

const appendText = `with head as (${advanceHead}), ${rest}`
const openText = `with head as (${insertHead}), ${rest}`

const values = ({ shopId, orderId, after, entries, head, rows, sides }: Write): unknown[] => [
  shopId,
  orderId,
  after,
  entries.at(-1)?.seq,
  entries.at(-1)?.hash,
  head.locationId,
  head.promisedAt,
  head.waitsHere,
  head.assignedTo,
  head.isOpen,
  head.sealed,
  JSON.stringify(head.agenda),
  entries.at(-1)?.receivedAt,
  entries.map(({ id }) => id),
  entries.map(({ seq }) => seq),
  entries.map(({ kind }) => kind),
  entries.map(({ version }) => version),
  entries.map(({ payload }) => canonicalText(payload)),
  entries.map(({ given }) => canonicalText(given)),
  entries.map(({ writtenBy }) => canonicalText(writtenBy)),
  entries.map(({ restsOn }) => `{${restsOn.join(',')}}`),
  entries.map(({ deviceId }) => deviceId),
  entries.map(({ writtenAt }) => writtenAt),
  entries.map(({ receivedAt }) => receivedAt),
  entries.map(({ previousHash }) => previousHash),
  entries.map(({ hash }) => hash),
  sides.map(({ digest }) => digest),
  sides.map(({ salt }) => Buffer.from(salt)),
  sides.map(({ text }) => text),
  rows.cycles.map(({ entryId }) => entryId),
  rows.cycles.map(({ instrumentId }) => instrumentId),
  rows.cycles.map(({ clicks }) => clicks),
  rows.parts.map(({ entryId }) => entryId),
  rows.parts.map(({ partNumber }) => partNumber),
  rows.parts.map(({ quantity }) => quantity),
  rows.sensors.map(({ entryId }) => entryId),
  rows.sensors.map(({ wheel }) => wheel),
  rows.sensors.map(({ sensorId }) => sensorId),
  rows.sensors.map(({ how }) => how),
  head.vehicleId,
  rows.reports.map(({ entryId }) => entryId),
  rows.reports.map(({ number }) => number),
  rows.reports.map(({ sha256 }) => sha256),
  sides.map(({ side }) => side),
]
