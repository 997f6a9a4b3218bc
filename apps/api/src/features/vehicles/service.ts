import type { Vehicle, VehicleContent } from '@bayledger/contract/vehicles'
import { readVin } from '@bayledger/reckoning/vehicle/vin'
import { v7 as newId } from 'uuid'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { once } from '../../core/once.ts'
import { listSameRecords } from '../../core/same-records.ts'
import { recordMerged, staleVersion } from '../../core/stale-version.ts'
import type { Deps } from '../../deps.ts'
import { presentVehicle, withoutMarks } from './present.ts'
import * as store from './store.ts'

export const listVehicles = async (deps: Deps, customerId: string): Promise<Vehicle[]> =>
  (
    await store.listVehiclesOf(
      deps.prisma,
      deps.shopId,
      await listSameRecords(deps.prisma, deps.shopId, 'customer', customerId),
    )
  ).map(presentVehicle)

export const createVehicle = (
  deps: Deps,
  actor: StaffActor,
  key: { key: string; requestHash: string },
  content: VehicleContent,
): Promise<Vehicle> => {
  const at = deps.clock.now()
  const checked = withPlainVin(content)
  return once(deps.prisma, { shopId: deps.shopId, actor: actor.staffId, ...key, at }, async (tx) =>
    presentVehicle(await store.insertVehicle(tx, deps.shopId, newId(), checked, at)),
  )
}

/** The vehicle whose record this is, or was before it was merged. @throws VEHICLE_NOT_FOUND */
export const getVehicle = async (deps: Deps, vehicleId: string): Promise<Vehicle> => {
  const row = await store.findSurvivingVehicle(deps.prisma, deps.shopId, vehicleId)
  if (!row) throw new AppError({ code: 'VEHICLE_NOT_FOUND' })
  return presentVehicle(row)
}

/** A vehicle as this person may see it: on a tablet without VIN and notes. */
export const getVehicleFor = async (deps: Deps, actor: StaffActor, vehicleId: string): Promise<Vehicle> => {
  const vehicle = await getVehicle(deps, vehicleId)
  return actor.kind === 'desk' ? vehicle : withoutMarks(vehicle)
}

export const putVehicle = async (
  deps: Deps,
  vehicleId: string,
  version: number,
  content: VehicleContent,
): Promise<Vehicle> => {
  const before = await store.findVehicle(deps.prisma, deps.shopId, vehicleId)
  // Whose owner stays the same stays with the record that it was written up for, so that a merge can be undone.
  const isOwnersStill = before !== null && presentVehicle(before).customerId === content.customerId
  const checked = withPlainVin(isOwnersStill ? { ...content, customerId: before.customerId } : content)
  const row = await store.updateVehicle(
    deps.prisma,
    deps.shopId,
    vehicleId,
    version,
    checked,
    deps.clock.now(),
  )
  if (row) return presentVehicle(row)
  const current = await getVehicle(deps, vehicleId)
  throw current.vehicleId === vehicleId
    ? staleVersion('vehicle', current, content)
    : recordMerged('vehicle', current.plate ?? current.description, current, content)
}

const withPlainVin = (content: VehicleContent): VehicleContent =>
  content.vin === null ? content : { ...content, vin: plainVin(content.vin) }

/** A VIN as it is stored: capital letters, no blanks. Refused with words when it cannot be one. */
const plainVin = (typed: string): string => {
  const read = readVin(typed)
  if (read.ok) return read.value.vin
  throw new AppError(
    { code: 'VIN_INVALID', ...read },
    { fields: [{ field: 'vin', found: read.found, allowed: read.allowed }] },
  )
}
