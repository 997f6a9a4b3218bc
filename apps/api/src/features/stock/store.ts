import type { StockContent } from '@bayledger/contract/stock'
import type { Prisma } from '@bayledger/db/generated/client'
import { contentOf, familyOf } from '../../core/part-family.ts'
import type { Kept, RecordStore } from '../../core/record-versions.ts'

export type Tx = Prisma.TransactionClient

/** A line of a stock list with what is promised, on its way, owed and used. */
export type StockItemRow = {
  readonly id: string
  readonly version: number
  readonly locationId: string
  readonly partNumber: string
  readonly family: unknown
  readonly onHand: number
  readonly onTheWay: number
  readonly coresOwed: number
  readonly drawnLately: number
  readonly lots: readonly string[]
  readonly promised: readonly { orderId: string; orderNumber: string; promisedAt: string }[]
}

/**
 * The stock lists of all places, or one line of them. `since` begins the days whose use is counted. What an open order
 * was promised holds until a part is drawn for it or the promise is withdrawn.
 */
export const listItems = (
  tx: Pick<Tx, '$queryRaw'>,
  shopId: string,
  since: Date,
  itemId: string | null = null,
): Promise<StockItemRow[]> => tx.$queryRaw<StockItemRow[]>`
  with promise as (
    select h.order_id, h.number, h.location_id, p.payload
    from order_heads h join lateral (
      select e.id, e.seq, e.payload from entries e
      where e.shop_id = h.shop_id and e.order_id = h.order_id and e.kind = 'part.promised'
        and not exists (select from entries x where x.shop_id = h.shop_id and x.order_id = h.order_id
          and x.kind = 'entry.struck' and x.payload ->> 'entryId' = e.id::text)
      order by e.seq desc limit 1
    ) p on true
    where h.shop_id = ${shopId}::uuid and h.is_open
      and not exists (select from entries d where d.shop_id = h.shop_id and d.order_id = h.order_id
        and d.kind = 'part.drawn' and d.seq > p.seq)
  )
  select s.id, s.version, s.location_id as "locationId", s.part_number as "partNumber", s.family, s.on_hand as "onHand",
    (select coalesce(-sum(c.quantity), 0)::int from stock_changes c
      where c.shop_id = s.shop_id and c.to_item_id = s.id and c.kind = 'sent'
        and not exists (select from stock_changes a where a.shop_id = c.shop_id and a.transfer_id = c.transfer_id
          and a.kind = 'arrived')) as "onTheWay",
    (select coalesce(sum(c.cores), 0)::int from stock_changes c
      where c.shop_id = s.shop_id and c.stock_item_id = s.id) as "coresOwed",
    (select coalesce(-sum(m.quantity), 0)::int from stock_movements m
      join entries e on e.shop_id = m.shop_id and e.id = m.entry_id
      where m.shop_id = s.shop_id and m.stock_item_id = s.id and e.received_at >= ${since}) as "drawnLately",
    array(select c.lot from stock_changes c where c.shop_id = s.shop_id and c.stock_item_id = s.id
      and c.kind in ('received', 'arrived') and c.lot is not null
      group by c.lot order by max(c.written_at) desc limit 10) as lots,
    coalesce((select json_agg(json_build_object('orderId', p.order_id, 'orderNumber', p.number,
        'promisedAt', p.payload ->> 'promisedAt') order by p.payload ->> 'promisedAt')
      from promise p where p.location_id = s.location_id
        and lot_key(p.payload ->> 'partCode') = lot_key(s.part_number)), '[]') as promised
  from stock_items s
  where s.shop_id = ${shopId}::uuid and (${itemId}::uuid is null or s.id = ${itemId}::uuid)
  order by s.part_number, s.location_id`

export type TransferRow = {
  readonly transferId: string
  readonly partNumber: string
  readonly fromLocationId: string
  readonly toLocationId: string
  readonly toItemId: string
  readonly quantity: number
  readonly lot: string | null
  readonly sentAt: Date
  readonly isOver: boolean
}

/** Transfers that are on their way; or the one that is named, though it is over. */
export const listTransfers = (
  tx: Pick<Tx, '$queryRaw'>,
  shopId: string,
  transferId: string | null = null,
): Promise<TransferRow[]> => tx.$queryRaw<TransferRow[]>`
  select * from (
    select c.transfer_id as "transferId", s.part_number as "partNumber", s.location_id as "fromLocationId",
      t.location_id as "toLocationId", t.id as "toItemId", -c.quantity as quantity, c.lot, c.written_at as "sentAt",
      exists (select from stock_changes a where a.shop_id = c.shop_id and a.transfer_id = c.transfer_id
        and a.kind = 'arrived') as "isOver"
    from stock_changes c
    join stock_items s on s.shop_id = c.shop_id and s.id = c.stock_item_id
    join stock_items t on t.shop_id = c.shop_id and t.id = c.to_item_id
    where c.shop_id = ${shopId}::uuid and c.kind = 'sent'
  ) transfer
  where "transferId" = ${transferId}::uuid or (${transferId}::uuid is null and not "isOver")
  order by "sentAt"`

type Row = NonNullable<Awaited<ReturnType<typeof findRow>>>

const findRow = (tx: Pick<Tx, 'stockItem'>, shopId: string, id: string) =>
  tx.stockItem.findUnique({ where: { shopId_id: { shopId, id } } })

/** `null` for a line that says nothing of its part. */
const keptOf = ({ id, version, partNumber, locationId, family }: Row): Kept<StockContent> | null => {
  const content = contentOf(family)
  return content && { id, version, content: { partNumber, locationId, ...content } }
}

/** The line with its row locked until the transaction ends, so that nothing is drawn or counted meanwhile. */
export const lockItem = async (
  tx: Tx,
  shopId: string,
  id: string,
): Promise<(Kept<StockContent> & { readonly onHand: number }) | null> => {
  await tx.$queryRaw`select from stock_items where shop_id = ${shopId}::uuid and id = ${id}::uuid for update`
  const row = await findRow(tx, shopId, id)
  const kept = row && keptOf(row)
  return kept && { ...kept, onHand: row.onHand }
}

export const stockRecords: RecordStore<StockContent> = {
  subject: 'stock-item',
  lock: async (tx, shopId, id) => {
    const found = await lockItem(tx, shopId, id)
    return found && { id, version: found.version, content: found.content }
  },
  insert: async (tx, shopId, { id, version, content }, createdAt) => {
    const { partNumber, locationId, ...part } = content
    await tx.stockItem.create({
      data: { shopId, id, version, partNumber, locationId, family: familyOf(part), createdAt },
    })
  },
  update: async (tx, shopId, { id, version, content }) => {
    await tx.stockItem.update({
      where: { shopId_id: { shopId, id } },
      data: { version, family: familyOf(content) },
    })
  },
}

/** The line of a part at a place, however its number is written; `null`: there is none. */
export const findListed = async (tx: Tx, shopId: string, locationId: string, partNumber: string) => {
  const [found] = await tx.$queryRaw<{ id: string }[]>`
    select id from stock_items where shop_id = ${shopId}::uuid and location_id = ${locationId}::uuid
      and lot_key(part_number) = lot_key(${partNumber}) limit 1`
  return found ?? null
}

export type NewChange = {
  readonly id: string
  readonly stockItemId: string
  readonly kind: string
  readonly quantity: number
  readonly cores?: number
  readonly lot?: string | null
  readonly words?: string | null
  readonly transferId?: string
  readonly toItemId?: string
  readonly writtenBy: { readonly kind: 'staff'; readonly staffId: string }
  readonly writtenAt: Date
}

/** Writes a movement and moves what is on hand by it. */
export const insertChange = async (tx: Tx, shopId: string, change: NewChange): Promise<void> => {
  await tx.stockChange.create({ data: { shopId, ...change } })
  if (change.quantity !== 0)
    await tx.stockItem.update({
      where: { shopId_id: { shopId, id: change.stockItemId } },
      data: { onHand: { increment: change.quantity } },
    })
}

export const isPlace = async (tx: Pick<Tx, 'location'>, shopId: string, id: string): Promise<boolean> =>
  (await tx.location.count({ where: { shopId, id } })) === 1

export type ChangeRow = {
  readonly at: Date
  readonly kind: string
  readonly quantity: number
  readonly cores: number
  readonly lot: string | null
  readonly words: string | null
  readonly by: string | null
  readonly orderId: string | null
  readonly orderNumber: string | null
}

/** The newest 200 movements of a line, those of orders among them. */
export const listChanges = (
  tx: Pick<Tx, '$queryRaw'>,
  shopId: string,
  itemId: string,
): Promise<ChangeRow[]> => tx.$queryRaw<ChangeRow[]>`
  select * from (
    select c.written_at as at, c.kind, c.quantity, c.cores, c.lot, c.words, p.name as by, null as "orderId",
      null as "orderNumber"
    from stock_changes c
    left join staff p on p.shop_id = c.shop_id and p.id::text = c.written_by ->> 'staffId'
    where c.shop_id = ${shopId}::uuid and c.stock_item_id = ${itemId}::uuid
    union all
    select e.received_at, m.kind, m.quantity, 0, coalesce(e.payload ->> 'lot', e.payload ->> 'kitLot'), null, p.name, e.order_id::text, h.number
    from stock_movements m
    join entries e on e.shop_id = m.shop_id and e.id = m.entry_id
    join order_heads h on h.shop_id = e.shop_id and h.order_id = e.order_id
    left join staff p on p.shop_id = e.shop_id and p.id::text = e.written_by ->> 'staffId'
    where m.shop_id = ${shopId}::uuid and m.stock_item_id = ${itemId}::uuid
  ) movement order by at desc limit 200`
