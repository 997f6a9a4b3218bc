import * as contract from '@bayledger/contract/search'
import { mayHaveContact } from '../../core/sides-for.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { wantedFrom } from './policy.ts'
import { findHits } from './store.ts'

export const searchRoutes: readonly Binding[] = [
  bind(contract.search)(async ({ deps, actor, query }) => {
    const wanted = wantedFrom(query.q)
    // Whoever may not have a telephone number must not find out its digits by searching either.
    const asked = mayHaveContact(actor) ? wanted : { ...wanted, phoneEnd: null }
    return { status: 200, body: { hits: await findHits(deps.pool, deps.shopId, asked) } }
  }),
]
