import * as contract from '@bayledger/contract/holds'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

export const holdRoutes: readonly Binding[] = [
  bind(contract.listHolds)(async ({ deps }) => ({
    status: 200,
    body: { holds: await service.listHolds(deps) },
  })),
  bind(contract.placeHold)(async ({ deps, actor, body }) => ({
    status: 201,
    body: await service.placeHold(deps, actor, body),
  })),
  bind(contract.liftHold)(async ({ deps, actor, params }) => ({
    status: 200,
    body: await service.liftHold(deps, actor, params.holdId),
  })),
]
