import type { Vehicle } from '@bayledger/contract/vehicles'
import type { VehicleRow } from './store.ts'

export const presentVehicle = (row: VehicleRow): Vehicle => ({
  vehicleId: row.id,
  version: row.version,
  customerId: row.customer.survivorId ?? row.customerId,
  plate: row.plate,
  plateRegion: row.plateRegion,
  vin: row.vin,
  description: row.description,
  color: row.color,
  notes: row.notes,
  sheetId: row.sheetId,
})
