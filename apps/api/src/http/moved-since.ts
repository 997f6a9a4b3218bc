import type { Wake } from '@bayledger/contract/live'
import type { Client } from 'pg'

/** How far a process has looked: since when, the newest refused entry a shop, and what a wake-up has named. */
export type Seen = {
  since: Date | null
  readonly trays: Map<string, string>
  readonly named: Map<string, number>
}

type Row = {
  readonly shop: string
  readonly tray: string
  readonly newest: Date | null
  readonly moved: readonly { readonly orderId: string; readonly seq: number; readonly at: string }[] | null
}

/** More than this a shop at one look, and the wake-up names all. */
const mostOrders = 200

/**
 * What moved in every shop since the last look and was not named yet. The first look names nothing: whoever joins
 * reads everything anyway.
 */
export const listMovedSince = async (client: Client, seen: Seen): Promise<[shopId: string, Wake][]> => {
  const { rows } = await client.query<Row>({
    name: 'live-moved',
    text: `select id as shop,
        coalesce((select max(received_at) from refused_entries where shop_id = shops.id and settled_at is null)::text, '') as tray,
        greatest((select max(updated_at) from order_heads where shop_id = shops.id and is_open),
          (select max(ended_at) from order_heads where shop_id = shops.id)) as newest,
        (select json_agg(h) from (
          select order_id as "orderId", seq, updated_at as at from order_heads
          where shop_id = shops.id and is_open and updated_at >= $1
          union all
          select order_id, seq, ended_at from order_heads where shop_id = shops.id and ended_at >= $1
          order by at desc limit $2) h) as moved
      from shops`,
    values: [seen.since, mostOrders + 1],
  })
  const isFirst = seen.since === null
  const newest = rows.flatMap((row) => (row.newest ? [row.newest.getTime()] : []))
  seen.since = new Date(Math.max(seen.since?.getTime() ?? 0, ...newest))
  return rows.flatMap((row): [string, Wake][] => {
    const moved = row.moved ?? []
    const orders = moved.filter(({ orderId, seq }) => (seen.named.get(orderId) ?? 0) < seq)
    const trayBefore = seen.trays.get(row.shop)
    seen.trays.set(row.shop, row.tray)
    rememberNamed(seen, moved)
    const tray = trayBefore !== undefined && trayBefore !== row.tray
    if (isFirst || (orders.length === 0 && !tray)) return []
    const all = moved.length > mostOrders
    return [
      [row.shop, { all, orders: all ? [] : orders.map(({ orderId, seq }) => ({ orderId, seq })), tray }],
    ]
  })
}

/** Remembers what the next look may find again, and forgets what was named longest ago. */
const rememberNamed = ({ named }: Seen, moved: NonNullable<Row['moved']>): void => {
  for (const { orderId, seq } of moved) named.set(orderId, seq)
  if (named.size <= 10_000) return
  for (const orderId of [...named.keys()].slice(0, named.size - 5_000)) named.delete(orderId)
}
