import type { PlanInForce, Step } from '@bayledger/reckoning/step'
import { insecureWheels, wheelStatus } from '../questions/gates.ts'
import type { OrderState } from '../state.ts'
import { lowers } from './lift.ts'

/**
 * A new plan, with the steps that put a wheel back, and lower the vehicle onto it, added for each wheel of the earlier
 * plan that is not secured yet.
 * Whatever the customer has answered since, a wheel that came off must go on, be torqued and be checked. It may go to
 * another place than planned, because the customer may no longer want a rotation.
 */
export const withWheelsSecured = (before: OrderState, plan: PlanInForce): PlanInForce => {
  const planned = new Set(plan.steps.map(({ stepKey }) => stepKey))
  const kept = (before.plan?.plan.steps ?? []).filter(
    (step) =>
      !planned.has(step.stepKey) &&
      ((lowers(step) && before.closed[step.stepKey] === undefined && insecureWheels(before).length > 0) ||
        (step.wheel !== null &&
          securing.has(step.closedBy) &&
          ['off', 'untorqued', 'unchecked'].includes(wheelStatus(before, step.wheel)))),
  )
  if (kept.length === 0) return plan
  const keys = new Set(kept.map(({ stepKey }) => stepKey))
  const freed = kept.map(({ comesFrom: _comesFrom, ...step }) => ({
    ...step,
    bundleKey: null,
    waitsFor: step.waitsFor.filter((key) => keys.has(key)),
  }))
  return { ...plan, steps: [...freed, ...plan.steps] }
}

const securing: ReadonlySet<Step['closedBy']> = new Set(['wheel.mounted', 'studs.torqued', 'torque.checked'])
