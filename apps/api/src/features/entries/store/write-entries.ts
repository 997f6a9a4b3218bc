import type { Pool } from 'pg'
import { type Authority, sessionsIn, tabletsIn } from '../../../core/writer.ts'
import { buildStatement, type HeadPart } from './projections/build-statement.ts'
import { headRow, setHead } from './projections/head.ts'
import type { OrderWrite } from './projections/projection.ts'

/** What must still be true in the database for an order's entries to be written. */
export type Guards = {
  /** The version of the shop's facts that the entries were admitted on. */
  readonly factsVersion: number
  /** What the people who wrote them write under. */
  readonly authorities: readonly Authority[]
}

export type GuardedWrite = OrderWrite & Guards

export type Opening = {
  readonly number: string
  /** The number that is taken from the shop's series; `null` where it was given. */
  readonly takes: { readonly series: string; readonly next: number } | null
}

/** Ids that are new, facts that are still those, and writers who may still write. */
const guards = `not exists (select from entries e where e.shop_id = a.shop_id and e.id = any (a.entry_ids))
    and not exists (select from refused_entries e where e.shop_id = a.shop_id and e.id = any (a.entry_ids))
    and exists (select from shops s where s.id = a.shop_id and s.facts_version = a.facts_version)
    and not exists (select from unnest(a.session_ids) as w (id) where not exists (
      select from sessions s left join devices d on d.shop_id = s.shop_id and d.id = s.device_id
      where s.shop_id = a.shop_id and s.id = w.id and s.ended_at is null and s.expires_at > a.at
        and (s.device_id is null or d.revoked_at is null)))
    and not exists (select from unnest(a.device_ids) as w (id) where not exists (
      select from devices d where d.shop_id = a.shop_id and d.id = w.id and d.revoked_at is null))`

const guardColumns = {
  entry_ids: 'uuid[]',
  session_ids: 'uuid[]',
  device_ids: 'uuid[]',
  facts_version: 'int',
} as const

const advancedHeads: HeadPart = {
  name: 'append',
  rebuilding: false,
  columns: { ...guardColumns, after_hash: 'text' },
  sql: `head as (
    update order_heads h set ${setHead} from asked a
    where h.shop_id = a.shop_id and h.order_id = a.order_id and h.seq = a.after and h.hash = a.after_hash
      and h.vehicle_id = a.vehicle_id
      and ${guards}
    returning h.shop_id, h.order_id
  )`,
}

const openedHead: HeadPart = {
  name: 'open',
  rebuilding: false,
  columns: { ...guardColumns, number: 'text', series: 'text', next: 'int' },
  sql: `taken as (
    update order_numbers n set next = n.next + 1 from asked a
    where n.shop_id = a.shop_id and n.series = a.series and n.next = a.next and ${guards}
    returning n.shop_id
  ), head as (
    insert into order_heads (shop_id, order_id, seq, hash, location_id, promised_at, waits_here, assigned_to, is_open,
      sealed, agenda, left_to_do, figures, updated_at, ended_at, opened_at, vehicle_id, number, customer_id)
    select shop_id, order_id, seq, hash, location_id, promised_at, waits_here, assigned_to, is_open,
      sealed, agenda, left_to_do, figures, at, case when is_open then null else at end, at, vehicle_id, number, customer_id from asked a
    where ${guards} and (a.series is null or exists (select from taken))
    on conflict (shop_id, order_id) do nothing returning shop_id, order_id
  )`,
}

/**
 * Writes what several orders gained, in one statement and one transaction. Each order is guarded for itself: all of
 * its entries are written, with everything that follows from them, or none. Gives back which orders were written, as
 * `orderKey` names them. A failure of any order fails the statement, and nothing of it was written.
 */
export const writeEntries = async (
  pool: Pool,
  writes: readonly GuardedWrite[],
): Promise<ReadonlySet<string>> => run(pool, advancedHeads, writes, {})

/** Writes the first entries of a new order and takes its number. `false`: the order, an id or the number is taken. */
export const openOrder = async (pool: Pool, write: GuardedWrite, opening: Opening): Promise<boolean> =>
  (
    await run(pool, openedHead, [write], {
      number: opening.number,
      series: opening.takes?.series ?? null,
      next: opening.takes?.next ?? null,
    })
  ).size === 1

/** An order's name across shops. */
export const orderKey = (shopId: string, orderId: string): string => `${shopId}/${orderId}`

const run = async (
  pool: Pool,
  head: HeadPart,
  writes: readonly GuardedWrite[],
  opening: object,
): Promise<ReadonlySet<string>> => {
  // In one order everywhere, so that two processes that write to the same orders do not wait for each other.
  const sorted = writes.toSorted((one, other) => (one.orderId < other.orderId ? -1 : 1))
  const heads = sorted.map((write) => {
    const [first] = write.entries
    const last = write.entries.at(-1)
    if (!first || !last) throw new RangeError('a write without entries')
    return {
      ...headRow(write, last),
      after_hash: first.previousHash,
      entry_ids: write.entries.map(({ id }) => id),
      session_ids: sessionsIn(write.authorities),
      device_ids: tabletsIn(write.authorities),
      facts_version: write.factsVersion,
      ...opening,
    }
  })
  const { name, text, values } = buildStatement(head, heads, sorted)
  const { rows } = await pool.query<{ shop_id: string; order_id: string }>({
    name,
    text,
    values: [...values],
  })
  return new Set(rows.map((row) => orderKey(row.shop_id, row.order_id)))
}
