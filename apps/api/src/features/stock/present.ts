import {
  type RecalledVehicle,
  type StockChange,
  type StockItem,
  StockTransfer,
} from '@bayledger/contract/stock'
import { suggestedMinimum } from '@bayledger/reckoning/stock/suggested-minimum'
import { contentOf } from '../../core/part-family.ts'
import type { RecalledRow } from './store/read-recall.ts'
import type { ChangeRow, StockItemRow, TransferRow } from './store.ts'

/** The days whose use is counted for the suggested minimum. */
export const usedDays = 90

/** None for a line that says nothing of its part. */
export const presentItem = (row: StockItemRow): StockItem[] => {
  const part = contentOf(row.family)
  if (part === null) return []
  const { id, version, partNumber, locationId, onHand, onTheWay, coresOwed, drawnLately } = row
  const { leadDays } = part
  const suggested =
    leadDays === null ? null : suggestedMinimum({ drawn: drawnLately, inDays: usedDays, leadDays })
  return [
    {
      id,
      version,
      content: { partNumber, locationId, ...part },
      facts: {
        onHand,
        onTheWay,
        coresOwed,
        drawnIn90Days: drawnLately,
        suggestedMinimum: suggested,
        lots: [...row.lots],
        promised: [...row.promised],
      },
    },
  ]
}

export const presentTransfer = ({ sentAt, isOver: _isOver, toItemId: _toItemId, ...row }: TransferRow) =>
  StockTransfer.parse({ ...row, sentAt: sentAt.toISOString() })

export const presentChange = ({ at, kind, ...row }: ChangeRow): StockChange => ({
  ...row,
  at: at.toISOString(),
  kind: kind as StockChange['kind'],
})

/** By vehicle, with telephone and e-mail where the reader may have them. */
export const presentRecalled = (rows: readonly RecalledRow[], withContact: boolean): RecalledVehicle[] => {
  const vehicles = new Map<string, RecalledVehicle>()
  for (const row of rows) {
    const known = vehicles.get(row.vehicleId)
    const { customerId, name, mayCall, mayText, mayEmail, phone, email } = row
    const vehicle = known ?? {
      vehicleId: row.vehicleId,
      description: row.description,
      plate: row.plate,
      owner: { customerId, name, mayCall, mayText, mayEmail, ...(withContact ? { phone, email } : {}) },
      parts: [],
    }
    vehicle.parts.push({
      orderId: row.orderId,
      orderNumber: row.orderNumber,
      drawnAt: row.drawnAt.toISOString(),
      isKit: row.isKit,
      wheel: row.wheel,
      partNumber: row.partNumber,
      lot: row.lot,
      sensorId: row.sensorId,
      heardLast:
        row.heardAt === null || row.heardWheel === null
          ? null
          : {
              at: row.heardAt.toISOString(),
              wheel: row.heardWheel,
              onThisVehicle: row.heardVehicleId === row.vehicleId,
            },
    })
    vehicles.set(row.vehicleId, vehicle)
  }
  return [...vehicles.values()]
}
