import * as contract from '@bayledger/contract/second-step'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from '../sessions/service/second-step.ts'

export const secondStepRoutes: readonly Binding[] = [
  bind(contract.getSecondStep)(async ({ deps, actor, params }) => ({
    status: 200,
    body: await service.getSecondStep(deps, actor, params.id),
  })),
  bind(contract.beginSecondStep)(async ({ deps, actor }) => ({
    status: 201,
    body: await service.beginSecondStep(deps, actor),
  })),
  bind(contract.confirmSecondStep)(async ({ deps, actor, body }) => ({
    status: 200,
    body: { recoveryCodes: await service.confirmSecondStep(deps, actor, body.code) },
  })),
  bind(contract.endSecondStep)(async ({ deps, actor, params }) => {
    await service.endSecondStep(deps, actor, params.id)
    return { status: 204 }
  }),
]
