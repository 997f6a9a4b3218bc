import { tablets as contract } from '@bayledger/contract/tablets'
import { type Binding, bind } from '../../http/binding.ts'
import { recordReply } from '../../http/record-reply.ts'
import * as service from './service.ts'

export const tabletRoutes: readonly Binding[] = [
  bind(contract.list)(async ({ deps }) => ({
    status: 200,
    body: { records: await service.listTablets(deps) },
  })),
  bind(contract.read)(async ({ deps, params }) => {
    const { record, history } = await service.getTablet(deps, params.id)
    const { body, headers } = recordReply(record, record.facts)
    return { status: 200, body: { record: body, history }, headers }
  }),
  bind(contract.put)(async ({ deps, actor, params, version, body }) => {
    const kept = await service.putTablet(deps, actor, { id: params.id, version, content: body.content })
    return { status: 200, ...recordReply(kept, kept.facts) }
  }),
]
