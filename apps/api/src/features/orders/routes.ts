import * as contract from '@bayledger/contract/orders'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

export const orderRoutes: readonly Binding[] = [
  bind(contract.getOrder)(async ({ deps, params }) => ({
    status: 200,
    body: await service.getOrder(deps, params.orderId),
  })),
  bind(contract.getEntriesAfter)(async ({ deps, params, query }) => ({
    status: 200,
    body: await service.getEntriesAfter(deps, params.orderId, Number(query.after)),
  })),
]
