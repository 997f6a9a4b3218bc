import * as contract from '@bayledger/contract/vehicle-page'
import { type Binding, bind } from '../../http/binding.ts'
import { getVehiclePage } from './service.ts'

export const vehiclePageRoutes: readonly Binding[] = [
  bind(contract.getVehiclePage)(async ({ deps, actor, params }) => ({
    status: 200,
    body: await getVehiclePage(deps, actor, params.vehicleId),
  })),
]
