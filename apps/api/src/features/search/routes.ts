import * as contract from '@bayledger/contract/search'
import { type Binding, bind } from '../../http/binding.ts'
import { wantedFrom } from './policy.ts'
import { findHits } from './store.ts'

export const searchRoutes: readonly Binding[] = [
  bind(contract.search)(async ({ deps, query }) => ({
    status: 200,
    body: { hits: await findHits(deps.pool, deps.shopId, wantedFrom(query.q)) },
  })),
]
