import * as contract from '@bayledger/contract/day'
import { noteExport } from '../../core/note-export.ts'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

export const dayRoutes: readonly Binding[] = [
  bind(contract.getDay)(async ({ deps, query }) => ({
    status: 200,
    body: await service.getDay(deps, query),
  })),
  bind(contract.exportDay)(async ({ deps, actor, query }) => {
    const fileName = `payments-${query.day}.csv`
    const bytes = await service.exportDay(deps, query)
    await noteExport(deps, actor, fileName)
    return { status: 200, bytes, fileName }
  }),
]
