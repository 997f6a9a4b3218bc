import type { Pool } from 'pg'

type Holding = { readonly shopId: string; readonly orderId: string; readonly deviceId: string }

/** Notes that a tablet holds an order; gives back whether no other tablet that is let in does. */
export const holdOrder = async (
  pool: Pool,
  { shopId, orderId, deviceId }: Holding,
  at: Date,
): Promise<boolean> => {
  const { rows } = await pool.query<{ alone: boolean }>({
    name: 'hold-order',
    text: `with held as (insert into order_holders (shop_id, order_id, device_id, since) values ($1, $2, $3, $4)
        on conflict do nothing)
      select not exists (select 1 from order_holders h join devices d on d.shop_id = h.shop_id and d.id = h.device_id
        where h.shop_id = $1 and h.order_id = $2 and h.device_id <> $3 and d.revoked_at is null) as alone`,
    values: [shopId, orderId, deviceId, at],
  })
  return rows[0]?.alone ?? false
}

/** Notes that a tablet has dropped every order but these. */
export const dropOtherOrders = async (
  pool: Pool,
  { shopId, deviceId, orderIds }: Omit<Holding, 'orderId'> & { readonly orderIds: readonly string[] },
): Promise<void> => {
  await pool.query({
    name: 'drop-orders',
    text: 'delete from order_holders where shop_id = $1 and device_id = $2 and not order_id = any ($3::uuid[])',
    values: [shopId, deviceId, orderIds],
  })
}
