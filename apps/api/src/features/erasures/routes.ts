import * as contract from '@bayledger/contract/erasures'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

export const erasureRoutes: readonly Binding[] = [
  bind(contract.previewErasure)(async ({ deps, params }) => ({
    status: 200,
    body: await service.previewErasure(deps, params.customerId),
  })),
  bind(contract.erasePerson)(async ({ deps, actor, params, body }) => ({
    status: 201,
    body: await service.erasePerson(deps, params.customerId, { ...body, by: actor.staffId }),
  })),
  bind(contract.listErasures)(async ({ deps }) => ({
    status: 200,
    body: { erasures: await service.listErasures(deps) },
  })),
]
