import type { Vehicle, VehicleContent } from '@bayledger/contract/vehicles'
import { v7 as newId } from 'uuid'
import type { Deps } from '../../deps.ts'
import type { StaffActor } from '../../http/actor.ts'
import { AppError } from '../../http/app-error.ts'
import { constraintNamed } from '../../http/constraint-named.ts'
import { once } from '../../http/once.ts'
import { staleVersion } from '../../http/stale-version.ts'
import { plainVin } from './policy.ts'
import { presentVehicle } from './present.ts'
import * as store from './store.ts'

export const listVehicles = async (deps: Deps, customerId: string): Promise<Vehicle[]> =>
  (await store.listVehiclesOf(deps.prisma, deps.shopId, customerId)).map(presentVehicle)

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
  ).catch(toProblem)
}

export const getVehicle = async (deps: Deps, vehicleId: string): Promise<Vehicle> => {
  const row = await store.findVehicle(deps.prisma, deps.shopId, vehicleId)
  if (!row) throw new AppError('VEHICLE_NOT_FOUND', 'Search for the vehicle again, or add a new one.')
  return presentVehicle(row)
}

export const putVehicle = async (
  deps: Deps,
  vehicleId: string,
  version: number,
  content: VehicleContent,
): Promise<Vehicle> => {
  const checked = withPlainVin(content)
  const row = await store
    .updateVehicle(deps.prisma, deps.shopId, vehicleId, version, checked, deps.clock.now())
    .catch(toProblem)
  if (row) return presentVehicle(row)
  throw staleVersion('vehicle', await getVehicle(deps, vehicleId), content)
}

const withPlainVin = (content: VehicleContent): VehicleContent =>
  content.vin === null ? content : { ...content, vin: plainVin(content.vin) }

/** What the database refused, by the name of the constraint. */
const toProblem = (error: unknown): never => {
  switch (constraintNamed(error)) {
    case 'vehicles__vin_once':
      throw new AppError('VIN_TAKEN', 'Search for the VIN and open that vehicle, or read this one again.')
    case 'vehicles__customer':
      throw new AppError('CUSTOMER_NOT_FOUND', 'Search for the customer again, or add a new one.')
    case 'vehicles__sheet':
      throw new AppError('SHEET_NOT_FOUND', 'Choose a sheet from the list, or leave it empty.')
    default:
      throw error
  }
}
