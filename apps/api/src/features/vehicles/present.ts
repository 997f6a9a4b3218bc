import type { Vehicle } from '@bayledger/contract/vehicles'
import type { VehicleRow } from './store.ts'

/** The vehicle as a tablet keeps it, which may be lost: without what tells it from others of its kind but the plate. */
export const withoutMarks = (vehicle: Vehicle): Vehicle => ({ ...vehicle, vin: null, notes: null })

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
