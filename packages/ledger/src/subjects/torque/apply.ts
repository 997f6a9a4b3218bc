import { type TorqueRound, torqueRounds } from '@bayledger/reckoning/torque/torque-rounds'
import { changeWheel } from '../../fold/change-wheel.ts'
import { closeStep } from '../../fold/close-step.ts'
import { type Appliers, type FoldableOf, recorded } from '../../fold/foldable.ts'
import { closedByAny, reopen } from '../../fold/reopen.ts'
import type { OrderState, OvertakenRound, TorqueSeal, WheelWork } from '../../state.ts'
import type { torqueKinds } from './kinds.ts'
import { validRounds, withoutRounds } from './rounds.ts'

/**
 * A round that is sealed again invalidates the rounds after it and the second check, because the check must be of the
 * present torque. A nut that still turns on the last round sends the wheel back to the round before.
 */
const applyRound = (state: OrderState, entry: FoldableOf<'studs.torqued'>): OrderState => {
  const { stepKey, round, ...payload } = entry.payload
  const seal = recorded(payload, entry)
  const moved = round === 'again' && seal.moved.length > 0
  const from = moved ? 'full' : round
  const overtaken = overtake(state, seal, from)
  if (moved) return withOvertaken(overtaken, { ...seal, round })
  const sealed = changeWheel(overtaken, seal.wheel, (work) => ({
    ...work,
    rounds: { ...work.rounds, [round]: seal },
  }))
  return closeStep(sealed, stepKey, entry)
}

/** The second person's round: a nut that turns under it sends the wheel back to the round at the figure. */
const applyCheck = (state: OrderState, entry: FoldableOf<'torque.checked'>): OrderState => {
  const { stepKey, checkedBy: _proven, ...payload } = entry.payload
  const seal = recorded(payload, entry)
  if (seal.moved.length > 0) return withOvertaken(overtake(state, seal, 'full'), { ...seal, round: 'check' })
  return closeStep(
    changeWheel(state, seal.wheel, (work) => ({ ...work, checked: seal })),
    stepKey,
    entry,
  )
}

const withOvertaken = (state: OrderState, seal: OvertakenRound): OrderState =>
  changeWheel(state, seal.wheel, (work) => ({ ...work, overtaken: [...work.overtaken, seal] }))

/** Sets aside the rounds of a wheel from one round on, with its second check, and opens their steps again. */
const overtake = (state: OrderState, { wheel }: TorqueSeal, from: TorqueRound): OrderState => {
  const stale = torqueRounds.slice(torqueRounds.indexOf(from))
  const changed = changeWheel(state, wheel, (work) => withoutRounds(work, stale))
  return reopen(
    changed,
    wheel,
    (step) =>
      step.closedBy === 'torque.checked' ||
      (step.closedBy === 'studs.torqued' && step.round !== null && stale.includes(step.round)),
  )
}

/** A wheel that comes off or goes on needs every torque round again: the earlier rounds belong to another fitting. */
export const freshFitting = (
  work: WheelWork,
): Pick<WheelWork, 'rounds' | 'overtaken' | 'earlierFittings' | 'checked'> => ({
  rounds: {},
  overtaken: [],
  earlierFittings: [...work.earlierFittings, ...work.overtaken, ...validRounds(work)],
  checked: null,
})

export const torqueSteps = closedByAny('studs.torqued', 'torque.checked')

export const applyTorque: Appliers<keyof typeof torqueKinds> = {
  'studs.torqued': applyRound,
  'torque.checked': applyCheck,
}
