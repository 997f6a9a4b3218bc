import type { Step, StepCode } from '@bayledger/reckoning/step'
import type { OrderState } from '../state.ts'

const liftCodes: ReadonlySet<StepCode | 'other'> = new Set([
  'lift-vehicle',
  'lower-to-touching',
  'lower-fully',
])
const loweringCodes: ReadonlySet<StepCode | 'other'> = new Set(['lower-to-touching', 'lower-fully'])

/** Whether a step moves the vehicle on the lift. */
export const movesLift = ({ code }: Step): boolean => liftCodes.has(code)

/** Whether a step lowers the vehicle. */
export const lowers = ({ code }: Step): boolean => loweringCodes.has(code)

/**
 * The keys of the lift's steps that are open again under a plan: where work off the ground is still to do and the vehicle
 * was lowered before, it is lifted a second time.
 */
export const liftedAgain = (state: OrderState): readonly string[] => {
  const steps = state.plan?.plan.steps ?? []
  const isOpen = ({ stepKey }: Step): boolean => !state.closed[stepKey] && !state.setAside[stepKey]
  const isLowered = steps.some((step) => lowers(step) && !isOpen(step))
  const hasWorkAbove = steps.some((step) => step.height === 'lifted' && !movesLift(step) && isOpen(step))
  return isLowered && hasWorkAbove ? steps.filter(movesLift).map(({ stepKey }) => stepKey) : []
}
