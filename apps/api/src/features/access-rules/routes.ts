import * as contract from '@bayledger/contract/access-rules'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

const etag = ({ version }: { version: number }) => ({ etag: `"${version}"` })

export const accessRuleRoutes: readonly Binding[] = [
  bind(contract.getAccessRules)(async ({ deps }) => {
    const read = await service.getAccessRules(deps)
    return { status: 200, body: read, headers: etag(read.record) }
  }),
  bind(contract.putAccessRules)(async ({ deps, actor, version, body }) => {
    const saved = await service.putAccessRules(deps, actor, version, body.content)
    return { status: 200, body: saved, headers: etag(saved) }
  }),
]
