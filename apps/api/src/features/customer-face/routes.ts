import * as contract from '@bayledger/contract/customer-face'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

export const customerFaceRoutes: readonly Binding[] = [
  bind(contract.getCustomerOrder)(async ({ deps, actor }) => ({
    status: 200,
    body: await service.getCustomerOrder(deps, actor),
  })),
  bind(contract.putCustomerLanguage)(async ({ deps, actor, body }) => {
    await service.putLanguage(deps, actor, body.language)
    return { status: 204 }
  }),
  bind(contract.decideEstimate)(async ({ deps, actor, body }) => {
    const { entry } = await service.decideEstimate(deps, actor, body)
    return { status: 201, body: { seq: entry.seq, receivedAt: entry.receivedAt } }
  }),
  bind(contract.getCustomerPhoto)(async ({ deps, actor, params }) => ({
    status: 200,
    bytes: await service.getCustomerPhoto(deps, actor, params.digest),
    fileName: `${params.digest.slice(0, 16)}.jpg`,
  })),
  bind(contract.getCustomerReport)(async ({ deps, actor }) => {
    const { bytes, number } = await service.getCustomerReport(deps, actor)
    return { status: 200, bytes, fileName: `${number}.pdf` }
  }),
]
