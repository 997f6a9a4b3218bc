import * as contract from '@bayledger/contract/reports'
import type { Parts } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

export const reportRoutes = (parts: Parts): Binding[] => [
  bind(contract.sealOrderReport)(async ({ deps, actor, params, body }) => {
    const sealed = await service.sealOrderReport(deps, {
      orderId: params.orderId,
      entryId: body.entryId,
      staffId: actor.staffId,
    })
    return {
      status: 201,
      body: {
        number: sealed.number,
        seq: sealed.seq,
        sha256: sealed.sha256,
        byteLength: sealed.byteLength,
        sealedAt: sealed.sealedAt.toISOString(),
      },
    }
  }),
  bind(contract.getReport)(async ({ deps, actor, params }) => ({
    status: 200,
    bytes: await service.getReportBytes(deps, actor, params.orderId, params.number),
    fileName: `${params.number}.pdf`,
  })),
  bind(contract.checkReport)(async ({ body }) => ({
    status: 200,
    body: await service.checkReport(parts, body),
  })),
  bind(contract.listSigningKeys)(async () => ({
    status: 200,
    body: { shops: await service.listSigningKeys(parts) },
  })),
]
