import type { Vehicle, VehicleContent } from '@bayledger/contract/vehicles'
import { v7 as newId } from 'uuid'
import type { Deps } from '../../deps.ts'
import type { StaffActor } from '../../http/actor.ts'
import { AppError } from '../../http/app-error.ts'
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
  )
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
  const row = await store.updateVehicle(
    deps.prisma,
    deps.shopId,
    vehicleId,
    version,
    checked,
    deps.clock.now(),
  )
  if (row) return presentVehicle(row)
  throw staleVersion('vehicle', await getVehicle(deps, vehicleId), content)
}

const withPlainVin = (content: VehicleContent): VehicleContent =>
  content.vin === null ? content : { ...content, vin: plainVin(content.vin) }
