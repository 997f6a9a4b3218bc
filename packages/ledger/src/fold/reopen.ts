import type { ClosingKind, Step } from '@bayledger/reckoning/step'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { wheelStatus } from '../questions/gates.ts'
import type { OrderState } from '../state.ts'

/** Reopens the steps of one wheel that these kinds closed, because later work replaced them. */
export const reopen = (
  state: OrderState,
  wheel: WheelPosition,
  concerns: (step: Step) => boolean,
): OrderState => {
  const stale = new Set(
    (state.plan?.plan.steps ?? [])
      .filter((step) => step.wheel === wheel && concerns(step))
      .map(({ stepKey }) => stepKey),
  )
  return { ...state, closed: without(state.closed, stale) }
}

export const closedByAny =
  (...kinds: readonly ClosingKind[]) =>
  (step: Step): boolean =>
    kinds.includes(step.closedBy)

/**
 * After a new plan, a closed step is open again if the plan now puts open work before it: a vehicle that gets one more
 * sensor needs another relearn. A wheel that is off does not have to come off twice.
 */
export const reopenOvertaken = (state: OrderState): OrderState => {
  const done = new Set(Object.keys(state.setAside))
  const stale = new Set<string>()
  for (const step of state.plan?.plan.steps ?? []) {
    if (!state.closed[step.stepKey]) continue
    const isOffAlready =
      step.closedBy === 'wheel.removed' && step.wheel !== null && wheelStatus(state, step.wheel) === 'off'
    if (isOffAlready || step.waitsFor.every((key) => done.has(key))) done.add(step.stepKey)
    else stale.add(step.stepKey)
  }
  return stale.size === 0 ? state : { ...state, closed: without(state.closed, stale) }
}

const without = <T>(
  record: Readonly<Record<string, T>>,
  keys: ReadonlySet<string>,
): Readonly<Record<string, T>> => Object.fromEntries(Object.entries(record).filter(([key]) => !keys.has(key)))
