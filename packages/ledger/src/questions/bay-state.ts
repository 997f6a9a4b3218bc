import type { OrderState } from '../state.ts'
import { authorizedBundles } from './answers.ts'

/** What a bay tablet may know of an order: everything but money. */
export type BayState = Omit<OrderState, 'estimates' | 'decisions' | 'paidCents' | 'authority'> & {
  readonly mayLook: boolean
  readonly mayDrive: boolean
  readonly authorized: readonly string[]
}

export const bayState = (state: OrderState): BayState => {
  const { estimates: _estimates, decisions: _decisions, paidCents: _paid, authority, ...rest } = state
  return {
    ...rest,
    mayLook: authority.look !== null,
    mayDrive: authority.drive !== null,
    authorized: authorizedBundles(state).map(({ bundleKey }) => bundleKey),
  }
}
