import {
  instruments as contract,
  instrumentsCsv as instrumentsCsvRoutes,
  listTorquedWheels,
} from '@bayledger/contract/instruments'
import { bindCsv } from '../../http/bind-csv.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { recordReply } from '../../http/record-reply.ts'
import { presentInstrument } from './present.ts'
import { instrumentsCsv } from './service/import-instruments.ts'
import * as service from './service.ts'

export const instrumentRoutes: readonly Binding[] = [
  bind(contract.list)(async ({ deps }) => ({
    status: 200,
    body: {
      records: (await service.listInstruments(deps)).map((kept) => {
        const { record, facts } = presentInstrument(kept)
        return { ...record, facts }
      }),
    },
  })),
  bind(contract.create)(async ({ deps, actor, once, body }) => {
    const { record, facts } = presentInstrument(
      await service.createInstrument(deps, actor, once, body.content, body.sure),
    )
    return { status: 201, ...recordReply(record, facts) }
  }),
  bind(contract.read)(async ({ deps, params }) => {
    const { record: kept, history } = await service.getInstrument(deps, params.id)
    const { record, facts } = presentInstrument(kept)
    const { body, headers } = recordReply(record, facts)
    return { status: 200, body: { record: body, history }, headers }
  }),
  bind(contract.put)(async ({ deps, actor, params, version, body }) => {
    const sent = { id: params.id, version, content: body.content }
    const { record, facts } = presentInstrument(await service.putInstrument(deps, actor, sent, body.sure))
    return { status: 200, ...recordReply(record, facts) }
  }),
  bind(listTorquedWheels)(async ({ deps, params, query }) => ({
    status: 200,
    body: { wheels: await service.listWheelsTorquedWith(deps, params.id, query.since) },
  })),
  ...bindCsv(instrumentsCsvRoutes, 'instruments.csv', instrumentsCsv),
]
