import type { Step } from '@bayledger/reckoning/step'
import { torqueRounds } from '@bayledger/reckoning/torque/torque-rounds'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { wheelStatus } from '../questions/gates.ts'
import { remedyOf } from '../questions/remedies.ts'
import { isSeating } from '../questions/tire-steps.ts'
import type { FoundTrouble, OrderState } from '../state.ts'
import { withoutRounds } from '../subjects/torque/rounds.ts'
import { changeWheel } from './change-wheel.ts'
import { closedByAny, reopen } from './reopen.ts'

const sensorSteps = closedByAny('part.drawn', 'sensor.programmed', 'sensor.fitted')
const hubSteps = closedByAny('wheel.mounted', 'studs.torqued', 'torque.checked')

/**
 * Notes what was found at a wheel, and opens the steps again that its remedy has to repeat: a wheel that is on comes off
 * again, what was torqued over a damaged stud no longer counts, and a tire that was mounted is mounted again.
 */
export const parkWheel = (before: OrderState, trouble: FoundTrouble): OrderState => {
  const state = { ...before, troubles: [...before.troubles, trouble] }
  const { wheel, what } = trouble
  if (wheel === null) return state
  const remedy = remedyOf(what)
  if (remedy === 'decision' || remedy === 'hole') return state
  const comesOffAgain = reopenRemoval(state, wheel)
  if (remedy === 'fastener') return withoutTorque(comesOffAgain, wheel)
  if (!hasRemedyPlanned(state, wheel, remedy)) return comesOffAgain
  if (isSeated(state, wheel))
    return reopen(comesOffAgain, wheel, ({ closedBy }) => closedBy !== 'wheel.removed')
  return remedy === 'part' ? reopen(comesOffAgain, wheel, sensorSteps) : comesOffAgain
}

const reopenRemoval = (state: OrderState, wheel: WheelPosition): OrderState =>
  wheelStatus(state, wheel) === 'off' ? state : reopen(state, wheel, closedByAny('wheel.removed'))

const withoutTorque = (state: OrderState, wheel: WheelPosition): OrderState => {
  const opened = reopen(state, wheel, (step) => step.code === 'repair-fastener' || hubSteps(step))
  return state.work[wheel] ? changeWheel(opened, wheel, (work) => withoutRounds(work, torqueRounds)) : opened
}

/** A remedy that is not planned yet comes with a new plan, which puts its steps before what has to be done again. */
const hasRemedyPlanned = (state: OrderState, wheel: WheelPosition, remedy: 'tire' | 'part'): boolean =>
  (state.plan?.plan.steps ?? []).some(
    ({ wheel: place, code, closedBy }) =>
      place === wheel && (remedy === 'tire' ? code === 'match-tire' : closedBy === 'part.drawn'),
  )

const isSeated = (state: OrderState, wheel: WheelPosition): boolean =>
  (state.plan?.plan.steps ?? []).some(
    (step: Step) => step.wheel === wheel && isSeating(step) && state.closed[step.stepKey] !== undefined,
  )
