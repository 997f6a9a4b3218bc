import type { Step } from '@bayledger/reckoning/step'
import { wheelNames } from '@bayledger/reckoning/wheels'
import { type Refusal, refuse } from '../admit/refusal.ts'
import type { OrderState } from '../state.ts'
import { holdingFinding, type WorkGate } from './finding-holds.ts'
import { missingOnArrival, roadGate, wheelStatus } from './gates.ts'

/**
 * Why a step of the plan may not be closed now; `null` where it may. It depends on the order alone, so the server that
 * refuses and the bay that shows a step as shut give the same answer. Who writes, which instrument is used and what
 * is recorded are checked beside it, by `admit`.
 */
export const whyNot = (state: OrderState, step: Step): Refusal | null =>
  alreadyClosed(state, step) ??
  forerunnerOpen(state, step) ??
  notAuthorized(state, step) ??
  figureUnverified(state, step) ??
  heldByWork(state, step)

/** A closed step is not closed twice. */
export const alreadyClosed = (state: OrderState, step: Step): Refusal | null =>
  state.closed[step.stepKey]
    ? refuse(
        'STEP_ALREADY_CLOSED',
        `The step "${step.does}" is already closed. Withdraw that entry first if it was wrong.`,
      )
    : null

/** The first step that must be closed or set aside before this one, with words for the person who is too early. */
const forerunnerOpen = (state: OrderState, step: Step): Refusal | null => {
  const waiting = step.waitsFor.find((key) => !state.closed[key] && !state.setAside[key])
  if (waiting === undefined) return null
  const first = state.plan?.plan.steps.find(({ stepKey }) => stepKey === waiting)
  return refuse(
    'STEP_OUT_OF_ORDER',
    `First: ${first?.does ?? waiting}${first?.wheel ? `, ${wheelNames[first.wheel]}` : ''}. Then this step.`,
  )
}

const notAuthorized = (state: OrderState, { bundleKey }: Step): Refusal | null =>
  bundleKey && state.answers[bundleKey]?.answer !== 'authorized'
    ? refuse(
        'STEP_NOT_AUTHORIZED',
        `The customer has not authorized "${bundleKey}"; ask at the desk before any work.`,
      )
    : null

const figureUnverified = (state: OrderState, { unverified, closedBy }: Step): Refusal | null =>
  unverified && !state.figures[unverified] && closedBy !== 'figure.confirmed'
    ? refuse(
        'FIGURE_UNVERIFIED',
        "This figure is not verified. A second person confirms it from the maker's source first.",
      )
    : null

/** What the vehicle, its findings and its wheels have against a step, by the kind of entry that would close it. */
const heldByWork = (state: OrderState, step: Step): Refusal | null => {
  const { wheel } = step
  switch (step.closedBy) {
    case 'wheel.removed':
      return arrivalIncomplete(state) ?? wheelHeld(state, step) ?? alreadyOff(state, step)
    case 'wheel.mounted':
      return wheel === null || wheelStatus(state, wheel) === 'off'
        ? null
        : refuse(
            'WHEEL_NOT_OFF',
            `The ${wheelNames[wheel]} wheel was not recorded as off. Record that first.`,
          )
    case 'pressure.set':
      return held(state, 'pressure-setting', step) ?? held(state, 'inflation', step) ?? noSheet(state)
    case 'studs.torqued':
      return noSheet(state) ?? stillOff(state, step)
    case 'torque.checked':
      return noSheet(state) ?? stillOff(state, step) ?? notTorqued(state, step)
    case 'relearn.done':
      return held(state, 'relearn', { wheel: null }) ?? (learnsOnTheRoad(state) ? roadShut(state) : null)
    case 'drive.done':
      return roadShut(state) ?? noConsentToDrive(state)
    case 'step.closed':
      return step.opensTire ? held(state, 'bead-break', step) : null
    default:
      return null
  }
}

const arrivalIncomplete = (state: OrderState): Refusal | null => {
  const [first] = missingOnArrival(state)
  return first
    ? refuse('ARRIVAL_INCOMPLETE', `No wheel comes off before the arrival check is complete. ${first.words}`)
    : null
}

const wheelHeld = (state: OrderState, { wheel }: Pick<Step, 'wheel'>): Refusal | null => {
  const holding = holdingFinding(state, 'wheel-removal', wheel)
  return holding
    ? refuse(
        'WHEEL_HELD_BY_FINDING',
        `Keep this wheel on: ${holding.code.replaceAll('-', ' ')} must be settled first. ${holding.next}`,
      )
    : null
}

const held = (state: OrderState, gate: WorkGate, { wheel }: Pick<Step, 'wheel'>): Refusal | null => {
  const holding = holdingFinding(state, gate, wheel)
  return holding
    ? refuse(
        'WORK_HELD_BY_FINDING',
        `Not yet: ${holding.code.replaceAll('-', ' ')} must be settled first. ${holding.next}`,
      )
    : null
}

const alreadyOff = (state: OrderState, { wheel }: Step): Refusal | null =>
  wheel !== null && state.work[wheel]?.removed && wheelStatus(state, wheel) === 'off'
    ? refuse('WHEEL_ALREADY_OFF', `The ${wheelNames[wheel]} wheel is already off.`)
    : null

const noSheet = (state: OrderState): Refusal | null =>
  state.sheet
    ? null
    : refuse('STEP_OUT_OF_ORDER', 'Choose the specification sheet first; the figure comes from it.')

const stillOff = (state: OrderState, { wheel }: Step): Refusal | null =>
  wheel !== null && wheelStatus(state, wheel) === 'off'
    ? refuse('WHEEL_NOT_TORQUED', 'This wheel is off. Fit it before torquing it.')
    : null

const notTorqued = (state: OrderState, { wheel }: Step): Refusal | null =>
  wheel === null || state.work[wheel]?.rounds.again
    ? null
    : refuse('WHEEL_NOT_TORQUED', `The ${wheelNames[wheel]} wheel is not torqued yet.`)

const learnsOnTheRoad = (state: OrderState): boolean => state.sheet?.sheet.relearn?.method === 'automatic'

/** The road gate as a refusal, for whatever moves the vehicle on the road. */
export const roadShut = (state: OrderState): Refusal | null => {
  const [first] = roadGate(state)
  return first ? refuse('ROAD_GATE_CLOSED', `The vehicle may not move on the road. ${first.words}`) : null
}

const noConsentToDrive = (state: OrderState): Refusal | null =>
  state.authority.drive
    ? null
    : refuse(
        'AUTHORITY_MISSING',
        'The customer has not agreed to a drive. Record the consent at the desk first.',
      )
