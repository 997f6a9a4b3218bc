import { priceBook as contract, pricesCsv as pricesCsvRoutes } from '@bayledger/contract/prices'
import { bindCsv } from '../../http/bind-csv.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { recordReply } from '../../http/record-reply.ts'
import { pricesCsv } from './service/import-prices.ts'
import * as service from './service.ts'

export const priceRoutes: readonly Binding[] = [
  bind(contract.list)(async ({ deps }) => {
    const kept = await service.findPrices(deps)
    const records = kept === null ? [] : [{ ...kept, facts: await service.factsOf(deps, kept) }]
    return { status: 200, body: { records } }
  }),
  bind(contract.read)(async ({ deps, params }) => {
    const { record, history } = await service.getPrices(deps, params.id)
    const { body, headers } = recordReply(record, await service.factsOf(deps, record))
    return { status: 200, body: { record: body, history }, headers }
  }),
  bind(contract.put)(async ({ deps, actor, params, version, body }) => {
    const sent = { id: params.id, version, content: body.content }
    const kept = await service.putPrices(deps, actor, sent, body.sure)
    return { status: 200, ...recordReply(kept, await service.factsOf(deps, kept)) }
  }),
  ...bindCsv(pricesCsvRoutes, 'prices.csv', pricesCsv),
]
