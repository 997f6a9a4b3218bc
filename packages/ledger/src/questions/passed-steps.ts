import type { Step, StepCode } from '@bayledger/reckoning/step'
import type { OrderState } from '../state.ts'

type Codes = ReadonlySet<StepCode | 'other'>

/** Without one of these no tire is worked on: setting it aside sets aside the work on that tire. */
const opening: Codes = new Set(['purge-sealant', 'purge-in-restraint', 'open-tire'])

const tireWork: Codes = new Set([
  ...opening,
  'look-inside',
  'find-leak-after-look',
  'judge-leak',
  'repair-leak',
  'fit-sensor',
  'renew-stem',
  'read-in-rim',
  'seat-tire',
  'seat-in-restraint',
  'torque-core',
  'put-core-back',
  'inflate-tire',
  'inflate-in-restraint',
  'check-leaks',
  'balance-wheel',
])

/** The step that was set aside so that a tire stays closed, with which this step of its work is set aside too. */
export const keptClosedBy = (state: OrderState, { code, wheel }: Step): Step | undefined => {
  if (!tireWork.has(code)) return undefined
  const here = (state.plan?.plan.steps ?? []).filter((step) => step.wheel === wheel && opening.has(step.code))
  return here.some((step) => step.opensTire && state.closed[step.stepKey])
    ? undefined
    : here.find(({ stepKey }) => state.setAside[stepKey] && !state.closed[stepKey])
}

/** Whether a step that is not closed will not be done: it was set aside, or its tire stays closed. */
export const isSetAside = (state: OrderState, step: Step): boolean =>
  state.setAside[step.stepKey] !== undefined || keptClosedBy(state, step) !== undefined

/** Whether a step no longer holds back those that wait for it. */
export const isPassed = (state: OrderState, stepKey: string): boolean => {
  if (state.closed[stepKey] || state.setAside[stepKey]) return true
  if (Object.keys(state.setAside).length === 0) return false
  const step = state.plan?.plan.steps.find((one) => one.stepKey === stepKey)
  return step !== undefined && isSetAside(state, step)
}

/**
 * Whether a step may be set aside. A tire that is opened is looked at inside, whatever its work is, and no wheel goes to
 * another place before somebody has seen that its tire may.
 */
export const maySetAside = ({ code }: Step): boolean =>
  code !== 'look-inside' && code !== 'check-tires-for-rotation'
