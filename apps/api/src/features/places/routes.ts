import { places as contract, placesCsv as placesCsvRoutes } from '@bayledger/contract/places'
import { bindCsv } from '../../http/bind-csv.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { recordReply } from '../../http/record-reply.ts'
import { placesCsv } from './service/places-csv.ts'
import * as service from './service.ts'

export const placeRoutes: readonly Binding[] = [
  bind(contract.list)(async ({ deps }) => ({
    status: 200,
    body: { records: (await service.listPlaces(deps)).map((kept) => ({ ...kept, facts: {} })) },
  })),
  bind(contract.create)(async ({ deps, actor, once, body }) => {
    const kept = await service.createPlace(deps, actor, once, body.content, body.sure)
    return { status: 201, ...recordReply(kept, {}) }
  }),
  bind(contract.read)(async ({ deps, params }) => {
    const { record, history } = await service.getPlace(deps, params.id)
    const { body, headers } = recordReply(record, {})
    return { status: 200, body: { record: body, history }, headers }
  }),
  bind(contract.put)(async ({ deps, actor, params, version, body }) => {
    const kept = await service.putPlace(
      deps,
      actor,
      { id: params.id, version, content: body.content },
      body.sure,
    )
    return { status: 200, ...recordReply(kept, {}) }
  }),
  ...bindCsv(placesCsvRoutes, 'places.csv', placesCsv),
]
