import * as contract from '@bayledger/contract/own-data'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

export const ownDataRoutes: readonly Binding[] = [
  bind(contract.copyOwnData)(async ({ deps, actor, params }) => ({
    status: 201,
    bytes: await service.copyOwnData(deps, actor, params.customerId),
    fileName: 'customer-data.zip',
  })),
  bind(contract.listOwnDataCopies)(async ({ deps, params }) => ({
    status: 200,
    body: { copies: await service.listCopies(deps, params.customerId) },
  })),
]
