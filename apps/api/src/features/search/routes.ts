import * as contract from '@bayledger/contract/search'
import type { Deps } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { wantedFrom } from './policy.ts'
import { findHits } from './store.ts'

export const searchRoutes = (deps: Deps): Binding[] => [
  bind(contract.search)(async ({ query }) => ({
    status: 200,
    body: { hits: await findHits(deps.pool, deps.shopId, wantedFrom(query.q)) },
  })),
]
