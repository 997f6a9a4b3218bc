import * as contract from '@bayledger/contract/merges'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

export const mergeRoutes: readonly Binding[] = [
  bind(contract.mergeCustomers)(async ({ deps, actor, params, version, body }) => ({
    status: 201,
    body: await service.merge(deps, actor, {
      subject: 'customer',
      survivorId: params.customerId,
      version,
      ...body,
    }),
  })),
  bind(contract.listCustomerMerges)(async ({ deps, params }) => ({
    status: 200,
    body: { merges: await service.listMerges(deps, 'customer', params.customerId) },
  })),
  bind(contract.mergeVehicles)(async ({ deps, actor, params, version, body }) => ({
    status: 201,
    body: await service.merge(deps, actor, {
      subject: 'vehicle',
      survivorId: params.vehicleId,
      version,
      ...body,
    }),
  })),
  bind(contract.listVehicleMerges)(async ({ deps, params }) => ({
    status: 200,
    body: { merges: await service.listMerges(deps, 'vehicle', params.vehicleId) },
  })),
  bind(contract.undoMerge)(async ({ deps, actor, params }) => ({
    status: 200,
    body: await service.undoMerge(deps, actor, params.mergeId),
  })),
]
