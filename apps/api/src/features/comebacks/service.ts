import type { ComebackFacts } from '@bayledger/reckoning/money/line-cover'
import type { Deps } from '../../deps.ts'
import { loadComeback } from '../entries/service/load-comeback.ts'
import { getLedger } from '../orders/service.ts'

/** What the warranty of a comeback rests on; `null` of an order that is joined to no earlier one. */
export const getComeback = async (deps: Deps, orderId: string): Promise<ComebackFacts | null> =>
  loadComeback(deps, (await getLedger(deps, orderId)).state)
