import type { ClosingKind, Step } from '@bayledger/reckoning/step'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { wheelStatus } from '../questions/gates.ts'
import { patternOf } from '../questions/pattern-of.ts'
import { isSpareOn } from '../questions/spare-on.ts'
import type { OrderState } from '../state.ts'
import { liftedAgain, lowers, movesLift } from './lift.ts'

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
 * sensor needs another relearn. A wheel that is off does not have to come off twice. A step that only prepares for the
 * one after it comes too late once that is closed: work that is done is not done again because the vehicle is lifted
 * again, or because an earlier plan did not have the step.
 */
export const reopenOvertaken = (state: OrderState): OrderState => {
  const steps = state.plan?.plan.steps ?? []
  const done = new Set([
    ...Object.keys(state.setAside),
    ...steps.filter(onlyPrepares).map(({ stepKey }) => stepKey),
  ])
  const exchanged = exchangesSpare(state)
  const stale = new Set<string>()
  for (const step of steps) {
    if (!state.closed[step.stepKey]) continue
    const isOffAlready =
      step.closedBy === 'wheel.removed' && step.wheel !== null && wheelStatus(state, step.wheel) === 'off'
    if (exchanged.has(step.stepKey)) {
      stale.add(step.stepKey)
      // What was done on the wheel that is off stays done.
      if (step.closedBy === 'wheel.removed') done.add(step.stepKey)
    } else if (isOffAlready || onlyPrepares(step) || step.waitsFor.every((key) => done.has(key)))
      done.add(step.stepKey)
    else stale.add(step.stepKey)
  }
  return reopenLift(stale.size === 0 ? state : { ...state, closed: without(state.closed, stale) })
}

/** What the tires allowed was for the pattern of the plan before: another is seen to again. Words of earlier entries stay. */
export const reopenTireCheck = (before: OrderState, state: OrderState): OrderState => {
  const [was, now] = [before, state].map(({ plan }) => plan?.plan.steps.find(patternOf))
  return was &&
    now &&
    patternOf(was) !== patternOf(now) &&
    typeof state.closed[now.stepKey]?.value === 'object'
    ? { ...state, closed: without(state.closed, new Set([now.stepKey])) }
    : state
}

/**
 * Removal and mounting of a wheel where the spare is on and the plan no longer wants it, or where the plan wants the spare
 * and another wheel is on.
 */
const exchangesSpare = (state: OrderState): ReadonlySet<string> => {
  const steps = state.plan?.plan.steps ?? []
  const places = steps.flatMap(({ closedBy, wheel, comesFrom }) =>
    closedBy === 'wheel.mounted' &&
    wheel !== null &&
    wheelStatus(state, wheel) !== 'off' &&
    isSpareOn(state, wheel) !== (comesFrom === 'SP')
      ? [wheel]
      : [],
  )
  return new Set(
    steps
      .filter(
        ({ closedBy, wheel }) =>
          wheel !== null &&
          places.includes(wheel) &&
          (closedBy === 'wheel.removed' || closedBy === 'wheel.mounted'),
      )
      .map(({ stepKey }) => stepKey),
  )
}

const onlyPrepares = (step: Step): boolean => movesLift(step) || preparing.has(step.code)

const preparing: ReadonlySet<Step['code']> = new Set([
  'purge-sealant',
  'purge-in-restraint',
  'inflate-tire',
  'inflate-in-restraint',
])

const reopenLift = (state: OrderState): OrderState => {
  const keys = new Set(liftedAgain(state))
  return keys.size === 0 ? state : { ...state, closed: without(state.closed, keys) }
}

/** A wheel that comes off has to be lowered onto again, whatever was lowered before. */
export const reopenLowering = (state: OrderState): OrderState => ({
  ...state,
  closed: without(
    state.closed,
    new Set((state.plan?.plan.steps ?? []).filter(lowers).map(({ stepKey }) => stepKey)),
  ),
})

const without = <T>(
  record: Readonly<Record<string, T>>,
  keys: ReadonlySet<string>,
): Readonly<Record<string, T>> => Object.fromEntries(Object.entries(record).filter(([key]) => !keys.has(key)))
