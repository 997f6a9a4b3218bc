import * as contract from '@bayledger/contract/owner-code'
import type { Parts } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from '../sessions/service/owner-code.ts'

export const ownerCodeRoutes = (parts: Parts): readonly Binding[] => [
  bind(contract.getOwnerCode)(async ({ deps, actor }) => ({
    status: 200,
    body: await service.getOwnerCode(deps, actor),
  })),
  bind(contract.makeOwnerCode)(async ({ deps, actor }) => ({
    status: 201,
    body: await service.makeOwnerCode(deps, actor),
  })),
  bind(contract.enterByOwnerCode)(async ({ body, tokenIn, from }) => {
    await service.enterByOwnerCode(parts, body, tokenIn('browser'), from)
    return { status: 204 }
  }),
]
