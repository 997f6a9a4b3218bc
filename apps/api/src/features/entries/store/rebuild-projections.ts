import { inTransaction } from '@bayledger/db/transaction'
import type { Entry } from '@bayledger/ledger/entry'
import type { Pool } from 'pg'
import { allProjections } from './projections/all-projections.ts'
import { buildStatement, type HeadPart } from './projections/build-statement.ts'
import { headRow, setHead } from './projections/head.ts'
import type { OrderWrite } from './projections/projection.ts'

export const listOrders = async (
  pool: Pool,
  shopId: string,
): Promise<{ readonly orderId: string; readonly number: string }[]> =>
  (
    await pool.query<{ orderId: string; number: string }>(
      'select order_id as "orderId", number from order_heads where shop_id = $1 order by number',
      [shopId],
    )
  ).rows

/** Sets what is on hand to the sum of what moved it. Appends wait meanwhile, so that none is left out. */
export const recountStock = (pool: Pool, shopId: string): Promise<void> =>
  inTransaction(pool, async (tx) => {
    await tx.query('lock table stock_items in share row exclusive mode')
    await tx.query(
      `update stock_items s set on_hand = m.moved
       from (select i.id,
           (coalesce((select sum(quantity) from stock_movements where shop_id = $1 and stock_item_id = i.id), 0)
           + coalesce((select sum(quantity) from stock_changes where shop_id = $1 and stock_item_id = i.id), 0))::int as moved
         from stock_items i where i.shop_id = $1) m
       where s.shop_id = $1 and s.id = m.id and s.on_hand <> m.moved`,
      [shopId],
    )
  })

const rebuiltHead: HeadPart = {
  name: 'rebuild',
  rebuilding: true,
  columns: { number: 'text', opened_at: 'timestamptz' },
  sql: `head as (
    update order_heads h set ${setHead}, customer_id = a.customer_id, vehicle_id = a.vehicle_id,
      number = coalesce(a.number, h.number), opened_at = a.opened_at
    from asked a where h.shop_id = a.shop_id and h.order_id = a.order_id
    returning h.shop_id, h.order_id
  )`,
}

/** Writes what the entries of one order make in place of what is stored, all or nothing. */
export const replaceProjection = (
  pool: Pool,
  write: OrderWrite,
  { first, last }: { readonly first: Entry; readonly last: Entry },
): Promise<void> =>
  inTransaction(pool, async (tx) => {
    const { shopId, orderId } = write
    await tx.query('select 1 from order_heads where shop_id = $1 and order_id = $2 for update', [
      shopId,
      orderId,
    ])
    const rebuilt = allProjections.filter(({ rebuild }) => rebuild !== 'never')
    for (const { rebuild } of rebuilt)
      if (typeof rebuild === 'object')
        await tx.query(`delete from ${rebuild.empties} where shop_id = $1 and order_id = $2`, [
          shopId,
          orderId,
        ])
    const row = {
      ...headRow(write, last),
      number: first.given.orderNumber ?? null,
      opened_at: first.receivedAt,
    }
    const { text, values } = buildStatement(rebuiltHead, [row], [write], rebuilt)
    await tx.query(text, [...values])
  })
