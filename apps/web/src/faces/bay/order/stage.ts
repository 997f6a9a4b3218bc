import { missingOnArrival, openSteps } from '@bayledger/ledger/questions/gates'
import type { OrderState } from '@bayledger/ledger/state'

/** What the bay does with an order now; `waiting`: someone else must act first. */
export type Stage = 'arrival' | 'findings' | 'work' | 'waiting'

export const stageOf = (state: OrderState): Stage => {
  if (state.handedBack || state.ended || state.reports.length > 0) return 'waiting'
  if (!state.complaint || !state.sheet || !state.authority.look) return 'waiting'
  const { diagnosis } = state
  if (!diagnosis || diagnosis.outdated) return missingOnArrival(state).length > 0 ? 'arrival' : 'findings'
  if (!diagnosis.confirmed) return 'findings'
  return openSteps(state).length > 0 ? 'work' : 'waiting'
}
