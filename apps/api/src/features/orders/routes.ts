import * as contract from '@bayledger/contract/orders'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

export const orderRoutes: readonly Binding[] = [
  bind(contract.getOrder)(async ({ deps, actor, params }) => ({
    status: 200,
    body: await service.getOrder(deps, actor, params.orderId),
  })),
  bind(contract.getLastOdometer)(async ({ deps, params }) => ({
    status: 200,
    body: { last: await service.getLastOdometer(deps, params.vehicleId) },
  })),
  bind(contract.keepOrders)(async ({ deps, actor, body }) => {
    await service.keepOrders(deps, actor, body.orderIds)
    return { status: 204 }
  }),
  bind(contract.getEntriesAfter)(async ({ deps, actor, params, query }) => ({
    status: 200,
    body: await service.getEntriesAfter(deps, actor, params.orderId, Number(query.after)),
  })),
]
