import * as contract from '@bayledger/contract/search'
import { type Binding, bind } from '../../http/binding.ts'
import { search } from './service.ts'

export const searchRoutes: readonly Binding[] = [
  bind(contract.search)(async ({ deps, actor, query }) => ({
    status: 200,
    body: { hits: await search(deps, actor, query.q) },
  })),
]
