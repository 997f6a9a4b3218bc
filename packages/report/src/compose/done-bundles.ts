import type { IssuedBundle, OrderState } from '@bayledger/ledger/state'

/** Whether every step of a bundle is closed; how the light then behaves on the road is reported separately. */
export const isDone = (state: OrderState, { bundleKey }: IssuedBundle): boolean => {
  const steps = (state.plan?.plan.steps ?? []).filter(
    (step) => step.bundleKey === bundleKey && step.closedBy !== 'drive.done',
  )
  return steps.length > 0 && steps.every(({ stepKey }) => state.closed[stepKey])
}
