import { namedStep, type Step, type StepNamed } from '@bayledger/reckoning/step'
import type { IssuedBundle, OrderState } from '../state.ts'
import { namedBundle } from './named.ts'

/** What was done already for a bundle. `lifted`: the vehicle is up, and the bundle has steps up there. */
export type WorkBegan =
  | { readonly why: 'step'; readonly step: StepNamed }
  | { readonly why: 'not-right'; readonly step: StepNamed }
  | { readonly why: 'lifted' }

/**
 * What was begun of a bundle's work; `null` while nothing was. A figure that was confirmed is no work on the vehicle. Where
 * all steps of a bundle belong to others, those at its wheels count.
 */
export const workBegan = (state: OrderState, bundle: IssuedBundle): WorkBegan | null => {
  const steps = stepsOf(state, bundle)
  const closed = steps.find(
    ({ stepKey, closedBy }) => state.closed[stepKey] && closedBy !== 'figure.confirmed',
  )
  if (closed) return { why: 'step', step: namedStep(closed) }
  const tried = steps.find(({ stepKey }) => state.troubles.some((trouble) => trouble.stepKey === stepKey))
  if (tried) return { why: 'not-right', step: namedStep(tried) }
  return isLifted(state) && steps.some(({ height }) => height !== 'floor') ? { why: 'lifted' } : null
}

const stepsOf = (state: OrderState, bundle: IssuedBundle): readonly Step[] => {
  const steps = state.plan?.plan.steps ?? []
  const own = steps.filter(({ bundleKey }) => bundleKey === bundle.bundleKey)
  const { wheels } = namedBundle(bundle)
  return own.length > 0 ? own : steps.filter(({ wheel }) => wheel !== null && wheels.includes(wheel))
}

/** Whether the vehicle is lifted: no bundle's step, so that it is lowered whatever the customer answers. */
const isLifted = (state: OrderState): boolean => {
  const isClosed = (code: Step['code']) =>
    (state.plan?.plan.steps ?? []).some((step) => step.code === code && state.closed[step.stepKey])
  return isClosed('lift-vehicle') && !isClosed('lower-fully')
}
