import * as contract from '@bayledger/contract/day'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

export const dayRoutes: readonly Binding[] = [
  bind(contract.getDay)(async ({ deps, query }) => ({
    status: 200,
    body: await service.getDay(deps, query),
  })),
  bind(contract.exportDay)(async ({ deps, query }) => ({
    status: 200,
    bytes: await service.exportDay(deps, query),
    fileName: `payments-${query.day}.csv`,
  })),
]
