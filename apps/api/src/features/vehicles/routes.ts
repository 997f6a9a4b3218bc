import * as contract from '@bayledger/contract/vehicles'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

const etag = ({ version }: { version: number }) => ({ etag: `"${version}"` })

export const vehicleRoutes: readonly Binding[] = [
  bind(contract.listVehicles)(async ({ deps, query }) => ({
    status: 200,
    body: { vehicles: await service.listVehicles(deps, query.customerId) },
  })),
  bind(contract.createVehicle)(async ({ deps, actor, once, body }) => {
    const vehicle = await service.createVehicle(deps, actor, once, body)
    return { status: 201, body: vehicle, headers: etag(vehicle) }
  }),
  bind(contract.getVehicle)(async ({ deps, params }) => {
    const vehicle = await service.getVehicle(deps, params.vehicleId)
    return { status: 200, body: vehicle, headers: etag(vehicle) }
  }),
  bind(contract.putVehicle)(async ({ deps, params, version, body }) => {
    const vehicle = await service.putVehicle(deps, params.vehicleId, version, body)
    return { status: 200, body: vehicle, headers: etag(vehicle) }
  }),
]
