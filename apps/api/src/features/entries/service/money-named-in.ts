import type { Draft } from '@bayledger/ledger/entry'
import type { MoneySides } from '@bayledger/ledger/questions/money'
import { sidesNamedIn } from '@bayledger/ledger/sides'
import type { Deps } from '../../../deps.ts'
import { listSides } from '../store/list-sides.ts'
import type { SideToKeep } from '../store/projections/projection.ts'

/**
 * The money sides that a draft names: those that came with it, and for the rest those that are kept already, as a new
 * version of an estimate names the sides of bundles that it leaves as they were.
 */
export const moneyNamedIn = async (
  deps: Pick<Deps, 'pool' | 'shopId'>,
  draft: Draft,
  came: readonly SideToKeep[],
): Promise<MoneySides> => {
  const named = sidesNamedIn(draft).filter(({ side }) => side === 'money')
  const sent = new Map(came.map(({ digest, text }) => [digest, text]))
  const missing = named.filter(({ digest }) => !sent.has(digest))
  const kept = await listSides(deps.pool, deps.shopId, missing)
  return new Map([...sent, ...kept.map(({ digest, text }) => [digest, text] as const)])
}
