import type { SearchHit } from '@bayledger/contract/search'
import type { StaffActor } from '../../core/actor.ts'
import { mayHaveContact } from '../../core/sides-for.ts'
import type { Deps } from '../../deps.ts'
import { type Wanted, wantedFrom } from './policy.ts'
import { presentHit } from './present.ts'
import { type FoundRow, find } from './store.ts'

/** What one line of the search box finds. */
export const search = async (deps: Deps, actor: StaffActor, typed: string): Promise<SearchHit[]> => {
  const wanted = wantedFrom(typed)
  // Whoever may not have a telephone number must not find out its digits by searching either.
  const asked = mayHaveContact(actor) ? wanted : wanted.filter(({ kind }) => kind !== 'phone')
  const rows = await found(deps, asked, typed)
  const now = deps.clock.now().toISOString()
  return rows.map((row) => presentHit(row, now))
}

/** Customers whose name or telephone number matches what was typed, likelier ones first. */
export const findCustomerIds = async (deps: Deps, actor: StaffActor, typed: string): Promise<string[]> => {
  const asked = wantedFrom(typed).filter(
    ({ kind }) => kind === 'name' || (kind === 'phone' && mayHaveContact(actor)),
  )
  const rows = await found(deps, asked, typed)
  return [...new Set(rows.map(({ customerId }) => customerId))]
}

/** Words that begin no name as they were typed are compared one by one. */
const found = (deps: Deps, asked: readonly Wanted[], typed: string): Promise<FoundRow[]> =>
  find(deps.pool, deps.shopId, asked, /\p{L}.*\s\S/u.test(typed.trim()) ? typed : null)
