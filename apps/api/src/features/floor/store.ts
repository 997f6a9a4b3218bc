import type { Pool } from 'pg'
import type { AgendaStage } from '../entries/service/project-entries.ts'

export type FloorRowStored = {
  readonly orderId: string
  readonly locationId: string
  readonly number: string
  readonly seq: number
  readonly openedAt: Date
  readonly promisedAt: Date | null
  readonly waitsHere: boolean
  readonly assignedTo: string | null
  readonly isOpen: boolean
  readonly sealed: boolean
  readonly agenda: readonly AgendaStage[]
  readonly customerName: string
  readonly vehicleDescription: string
  readonly color: string | null
  readonly plate: string | null
}

export const pageSize = 100

/** Open orders, and those that ended since `endedAfter`, newest opening last; a prepared statement, for it is hot. */
export const listFloorRows = async (
  pool: Pool,
  shopId: string,
  asked: {
    readonly locationId: string | null
    readonly endedAfter: Date
    readonly after: { readonly openedAt: string; readonly orderId: string } | null
  },
): Promise<FloorRowStored[]> => {
  const { rows } = await pool.query<FloorRowStored>({
    name: 'floor',
    text: `select h.order_id as "orderId", h.location_id as "locationId", h.number, h.seq, h.opened_at as "openedAt",
        h.promised_at as "promisedAt", h.waits_here as "waitsHere", h.assigned_to as "assignedTo",
        h.is_open as "isOpen", h.sealed, h.agenda, c.name as "customerName", v.description as "vehicleDescription",
        v.color, v.plate
      from order_heads h
      join customers c on c.shop_id = h.shop_id and c.id = h.customer_id
      join vehicles v on v.shop_id = h.shop_id and v.id = h.vehicle_id
      where h.shop_id = $1 and ($2::uuid is null or h.location_id = $2)
        and (h.is_open or h.updated_at >= $3)
        and ($4::timestamptz is null or (h.opened_at, h.order_id) > ($4, $5::uuid))
      order by h.opened_at, h.order_id
      limit $6`,
    values: [
      shopId,
      asked.locationId,
      asked.endedAfter,
      asked.after?.openedAt ?? null,
      asked.after?.orderId ?? null,
      pageSize + 1,
    ],
  })
  return rows
}
