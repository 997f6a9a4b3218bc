import * as contract from '@bayledger/contract/retention'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

const etag = ({ version }: { version: number }) => ({ etag: `"${version}"` })

export const retentionRoutes: readonly Binding[] = [
  bind(contract.getRetention)(async ({ deps }) => {
    const read = await service.getRetention(deps)
    return { status: 200, body: read, headers: etag(read.record) }
  }),
  bind(contract.putRetention)(async ({ deps, actor, version, body }) => {
    const saved = await service.putRetention(deps, actor, version, body.content)
    return { status: 200, body: saved, headers: etag(saved) }
  }),
  bind(contract.listRetentionDue)(async ({ deps }) => ({ status: 200, body: await service.listDue(deps) })),
]
