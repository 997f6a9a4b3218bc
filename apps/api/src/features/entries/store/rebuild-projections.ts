import { inTransaction } from '@bayledger/db/transaction'
import type { Pool } from 'pg'
import type { HeadProjection, RowProjection } from '../service/project-entries.ts'

export const listOrderIds = async (pool: Pool, shopId: string): Promise<string[]> => {
  const { rows } = await pool.query<{ order_id: string }>(
    'select order_id from order_heads where shop_id = $1 order by number',
    [shopId],
  )
  return rows.map(({ order_id }) => order_id)
}

/** Puts what entries make in place of what stands there, for one order, all or nothing. */
export const replaceProjection = (
  pool: Pool,
  shopId: string,
  orderId: string,
  made: {
    readonly head: HeadProjection
    readonly rows: RowProjection
    readonly at: string
    readonly seq: number
    readonly hash: string
  },
): Promise<void> =>
  inTransaction(pool, async (tx) => {
    const { head, rows, at } = made
    await tx.query('select 1 from order_heads where shop_id = $1 and order_id = $2 for update', [
      shopId,
      orderId,
    ])
    await tx.query(
      `update order_heads set seq = $3, hash = $4, location_id = $5, promised_at = $6, waits_here = $7,
        assigned_to = $8, is_open = $9, sealed = $10, agenda = $11::json, updated_at = $12
       where shop_id = $1 and order_id = $2`,
      [
        shopId,
        orderId,
        made.seq,
        made.hash,
        head.locationId,
        head.promisedAt,
        head.waitsHere,
        head.assignedTo,
        head.isOpen,
        head.sealed,
        JSON.stringify(head.agenda),
        at,
      ],
    )
    await tx.query('delete from seen_sensors where shop_id = $1 and order_id = $2', [shopId, orderId])
    for (const { entryId, wheel, sensorId, how } of rows.sensors)
      await tx.query(
        `insert into seen_sensors (shop_id, entry_id, order_id, vehicle_id, wheel, sensor_id, how)
         values ($1, $2, $3, $4, $5, $6, $7)`,
        [shopId, entryId, orderId, head.vehicleId, wheel, sensorId, how],
      )
    // A sealed report's row is never changed or removed: a missing one is added, a differing one is for verifying to name.
    for (const { entryId, number, sha256 } of rows.reports)
      await tx.query(
        `insert into sealed_reports (shop_id, number, order_id, entry_id, sha256, sealed_at)
         select $1, $2, $3, $4, $5, received_at from entries where shop_id = $1 and id = $4
         on conflict do nothing`,
        [shopId, number, orderId, entryId, sha256],
      )
  })
