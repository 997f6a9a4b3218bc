import * as contract from '@bayledger/contract/stock'
import { mayHaveContact } from '../../core/sides-for.ts'
import { bindCsv } from '../../http/bind-csv.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { stockCsv } from './service/import-stock.ts'
import * as service from './service.ts'

const etag = ({ version }: { version: number }) => ({ etag: `"${version}"` })

export const stockRoutes: readonly Binding[] = [
  bind(contract.stockItems.list)(async ({ deps }) => ({
    status: 200,
    body: { records: await service.listItems(deps) },
  })),
  bind(contract.stockItems.create)(async ({ deps, actor, once, body }) => {
    const item = await service.createItem(deps, actor, once, body.content)
    return { status: 201, body: item, headers: etag(item) }
  }),
  bind(contract.stockItems.read)(async ({ deps, params }) => {
    const body = await service.getItem(deps, params.id)
    return { status: 200, body, headers: etag(body.record) }
  }),
  bind(contract.stockItems.put)(async ({ deps, actor, params, version, body }) => {
    const item = await service.putItem(deps, actor, { id: params.id, version, content: body.content })
    return { status: 200, body: item, headers: etag(item) }
  }),
  bind(contract.listTransfers)(async ({ deps }) => ({
    status: 200,
    body: { transfers: await service.listTransfers(deps) },
  })),
  bind(contract.listStockChanges)(async ({ deps, params }) => ({
    status: 200,
    body: { changes: await service.listChanges(deps, params.id) },
  })),
  bind(contract.changeStock)(async ({ deps, actor, once, params, body }) => ({
    status: 201,
    body: await service.changeStock(deps, actor, once, params.id, body),
  })),
  bind(contract.receiveTransfer)(async ({ deps, actor, once, params, body }) => ({
    status: 201,
    body: await service.receiveTransfer(deps, actor, once, params.transferId, body),
  })),
  ...bindCsv(contract.stockCsv, 'stock.csv', stockCsv),
  bind(contract.recallLot)(async ({ deps, actor, query }) => ({
    status: 200,
    body: await service.recallLot(deps, query.lot, mayHaveContact(actor)),
  })),
]
