import type { OrderState } from './order-state.ts'

/** What a bay tablet may know of an order: everything but money. */
export type BayState = Omit<OrderState, 'estimates' | 'decisions' | 'paidCents' | 'authority'> & {
  readonly mayLook: boolean
  readonly mayDrive: boolean
  readonly authorized: readonly string[]
}

export const bayState = ({
  estimates,
  decisions: _decisions,
  paidCents: _paid,
  authority,
  ...rest
}: OrderState): BayState => ({
  ...rest,
  mayLook: authority.look !== null,
  mayDrive: authority.drive !== null,
  authorized: (estimates.at(-1)?.estimate.bundles ?? [])
    .filter(({ bundleKey }) => rest.answers[bundleKey]?.answer === 'authorized')
    .map(({ bundleKey }) => bundleKey),
})
