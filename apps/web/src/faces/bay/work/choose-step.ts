import { readySteps, torquedBy } from '@bayledger/ledger/questions/gates'
import { whyNot } from '@bayledger/ledger/questions/why-not'
import type { OrderState } from '@bayledger/ledger/state'
import type { Step } from '@bayledger/reckoning/step'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { refusals } from '@bayledger/wording/en/refusals'
import { steps } from '@bayledger/wording/en/steps'
import { refusalWords } from '@bayledger/wording/refusals'
import { stepDoes } from '@bayledger/wording/steps'

/** Whether a person torqued this wheel and so cannot be its second person. */
export const hasTorqued = (state: OrderState, wheel: WheelPosition | null, staffId: string): boolean =>
  wheel !== null &&
  torquedBy(state.work[wheel]).some((author) => author.kind === 'staff' && author.staffId === staffId)

/**
 * The step to show this person. A wheel that was tapped comes first; then a check that this very person may do,
 * because an unchecked wheel is the most urgent; then the plan's order, with checks for someone else,
 * the drive and what a finding holds last.
 */
export const chooseStep = (state: OrderState, staffId: string, wheel: WheelPosition | null): Step | null => {
  const ready = readySteps(state)
  const here = wheel === null ? [] : ready.filter((step) => step.wheel === wheel)
  return inTurn(state, here, staffId)[0] ?? inTurn(state, ready, staffId)[0] ?? null
}

const inTurn = (state: OrderState, steps: readonly Step[], staffId: string): Step[] => {
  const weight = (step: Step): number => {
    if (whyNot(state, step) !== null) return 4
    if (step.closedBy === 'torque.checked') return hasTorqued(state, step.wheel, staffId) ? 2 : 0
    return step.closedBy === 'drive.done' ? 3 : 1
  }
  return [...steps].sort((one, other) => weight(one) - weight(other))
}

/** Why a step is still blocked, in words; `null` if it may be done. */
export const whyShut = (state: OrderState, step: Step): string | null => {
  const shut = whyNot(state, step)
  if (shut === null) return null
  if (shut.code !== 'STEP_OUT_OF_ORDER' || shut.values.why !== 'forerunner' || shut.values.first === null)
    return refusalWords(refusals, shut)
  const { first } = shut.values
  return confirmations.has(first.code)
    ? `Not verified yet. First: ${stepDoes(steps, first)}, by a second person.`
    : `First: ${stepDoes(steps, first)}${first.wheel === null ? '' : `, ${first.wheel}`}.`
}

const confirmations: ReadonlySet<Step['code']> = new Set([
  'confirm-placard',
  'confirm-stud-torque',
  'confirm-frequency',
])
