import { namedBundle } from '@bayledger/ledger/questions/named'
import type { IssuedBundle, OrderState } from '@bayledger/ledger/state'

/**
 * Whether every step of a bundle is closed at the wheels that it names and at the vehicle. The drive is said with its own
 * verdict, and what was set aside at another wheel does not undo the work.
 */
export const isDone = (state: OrderState, bundle: IssuedBundle): boolean => {
  const { wheels } = namedBundle(bundle)
  const steps = (state.plan?.plan.steps ?? []).filter(
    ({ bundleKey, closedBy, wheel }) =>
      bundleKey === bundle.bundleKey &&
      closedBy !== 'drive.done' &&
      (wheel === null || wheels.length === 0 || wheels.includes(wheel)),
  )
  return steps.length > 0 && steps.every(({ stepKey }) => state.closed[stepKey])
}
