import * as contract from '@bayledger/contract/customer-face'
import type { Deps } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

export const customerFaceRoutes = (deps: Deps): Binding[] => [
  bind(contract.getCustomerOrder)(async ({ actor }) => ({
    status: 200,
    body: await service.getCustomerOrder(deps, actor),
  })),
  bind(contract.decideEstimate)(async ({ actor, body }) => {
    const { entry } = await service.decideEstimate(deps, actor, body)
    return { status: 201, body: { seq: entry.seq, receivedAt: entry.receivedAt } }
  }),
  bind(contract.getCustomerReport)(async ({ actor }) => {
    const { bytes, number } = await service.getCustomerReport(deps, actor)
    return { status: 200, bytes, fileName: `${number}.pdf` }
  }),
]
