import { comebackFacts } from '@bayledger/ledger/questions/comeback'
import type { OrderState } from '@bayledger/ledger/state'
import type { ComebackFacts } from '@bayledger/reckoning/money/line-cover'
import { dayIn } from '@bayledger/reckoning/ready/zoned-time'
import { readShopHead } from '../../../core/shop-head.ts'
import type { Deps } from '../../../deps.ts'
import { readTerms } from '../store/read-terms.ts'
import { loadLedger } from './load-ledger.ts'

/** A comeback of a comeback counts too; nobody comes back more often than that. */
const mostJoined = 10

/** What the cover of a comeback rests on, by the shop's terms of today; `null` of an order that is joined to none. */
export const loadComeback = async (
  deps: Pick<Deps, 'pool' | 'shopId'>,
  state: OrderState,
): Promise<ComebackFacts | null> => {
  if (!state.opened?.comebackOf) return null
  const joined: OrderState[] = []
  let of: string | null = state.opened.comebackOf
  while (of !== null && joined.length < mostJoined) {
    const earlier: OrderState = (await loadLedger(deps, of)).state
    joined.push(earlier)
    of = earlier.opened?.comebackOf ?? null
  }
  const { head, timeZone } = await readTerms(deps.pool, deps.shopId, state.locationId)
  return comebackFacts(state, joined, readShopHead(head).warranty, (instant) =>
    dayIn(new Date(instant), timeZone),
  )
}
