import { tablets as contract, tabletsCsv as tabletsCsvRoutes } from '@bayledger/contract/tablets'
import { bindCsv } from '../../http/bind-csv.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { recordReply } from '../../http/record-reply.ts'
import { tabletsCsv } from './service/tablets-csv.ts'
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
  ...bindCsv(tabletsCsvRoutes, 'tablets.csv', tabletsCsv),
]
