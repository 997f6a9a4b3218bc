import type { FloorRow } from '@bayledger/contract/orders'
import { presentMove } from '../../core/present-move.ts'
import { movesAt } from '../entries/service/moves-at.ts'
import type { FloorRowStored } from './store.ts'

export const presentFloorRow = (row: FloorRowStored, now: string): FloorRow => ({
  orderId: row.orderId,
  locationId: row.locationId,
  number: row.number,
  seq: row.seq,
  openedAt: row.openedAt.toISOString(),
  promisedAt: row.promisedAt?.toISOString() ?? null,
  waitsHere: row.waitsHere,
  assignedTo: row.assignedTo,
  isOpen: row.isOpen,
  sealed: row.sealed,
  customerName: row.customerName,
  vehicleDescription: row.vehicleDescription,
  color: row.color,
  plate: row.plate,
  moves: movesAt(row.agenda, now).map(presentMove),
})
