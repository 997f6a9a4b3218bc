import { isMissing, relearnOf, type SafetyFigure } from '@bayledger/reckoning/sheet'
import { namedStep, type Step } from '@bayledger/reckoning/step'
import { roadPositions } from '@bayledger/reckoning/wheels'
import { type Refusal, refuse } from '../admit/refusal.ts'
import type { OrderState } from '../state.ts'
import { authorizedBundles } from './answers.ts'
import { holdingFinding, type WorkGate } from './finding-holds.ts'
import { missingOnArrival, roadGate, wheelStatus } from './gates.ts'
import { isPassed, keptClosedBy } from './passed-steps.ts'
import { repairRefused } from './repair-refused.ts'
import { isSpareOn } from './spare-on.ts'
import { parkedBy } from './troubles.ts'

/**
 * Why a step of the plan may not be closed now; `null` if it may. The answer depends on the order alone, so the server
 * and the bay agree. `admit` also checks who writes, which instrument is used and what is recorded.
 */
export const whyNot = (state: OrderState, step: Step): Refusal | null =>
  orderOver(state) ??
  alreadyClosed(state, step) ??
  figureMissing(state, step) ??
  forerunnerOpen(state, step) ??
  notAuthorized(state, step) ??
  figureUnverified(state, step) ??
  parked(state, step) ??
  heldByWork(state, step)

const orderOver = ({ handedBack, ended, reports }: OrderState): Refusal | null => {
  if (handedBack || ended) return refuse('ORDER_ENDED', {})
  return reports.length > 0 ? refuse('ORDER_SEALED', {}) : null
}

/** A closed step is not closed twice. */
export const alreadyClosed = (state: OrderState, step: Step): Refusal | null =>
  state.closed[step.stepKey] ? refuse('STEP_ALREADY_CLOSED', { step: namedStep(step) }) : null

/** The first step that must be closed or set aside before this one. */
const forerunnerOpen = (state: OrderState, step: Step): Refusal | null => {
  const keptClosed = keptClosedBy(state, step)
  if (keptClosed && keptClosed !== step)
    return refuse('STEP_OUT_OF_ORDER', { why: 'forerunner', first: namedStep(keptClosed) })
  const waiting = step.waitsFor.find((key) => !isPassed(state, key))
  if (waiting === undefined) return null
  const first = state.plan?.plan.steps.find(({ stepKey }) => stepKey === waiting)
  return refuse('STEP_OUT_OF_ORDER', { why: 'forerunner', first: first ? namedStep(first) : null })
}

const notAuthorized = (state: OrderState, step: Step): Refusal | null =>
  step.bundleKey === null || securesAgain(state, step) || isAuthorized(state, step.bundleKey)
    ? null
    : refuse('STEP_NOT_AUTHORIZED', { step: namedStep(step) })

const isAuthorized = (state: OrderState, bundleKey: string): boolean =>
  authorizedBundles(state).some((bundle) => bundle.bundleKey === bundleKey)

/** A wheel that came off goes on, is torqued and is checked, whatever became of the estimate meanwhile. */
const securesAgain = (state: OrderState, { wheel, closedBy }: Step): boolean =>
  wheel !== null &&
  (closedBy === 'wheel.mounted' || closedBy === 'studs.torqued' || closedBy === 'torque.checked') &&
  ['off', 'untorqued', 'unchecked'].includes(wheelStatus(state, wheel))

/** The figure that a step is about or rests on, where the sheet does not have it: nobody can confirm nothing. */
const figureMissing = (state: OrderState, { unverified, code }: Step): Refusal | null => {
  const figure = unverified ?? confirms[code]
  const sheet = state.sheet?.sheet
  return figure && sheet && isMissing(sheet, figure) ? refuse('FIGURE_MISSING', { figure }) : null
}

const confirms: Readonly<Partial<Record<Step['code'], SafetyFigure>>> = {
  'confirm-placard': 'placard',
  'confirm-stud-torque': 'studTorque',
  'confirm-frequency': 'frequency',
}

const figureUnverified = (state: OrderState, { unverified, closedBy }: Step): Refusal | null =>
  unverified && !state.figures[unverified] && closedBy !== 'figure.confirmed'
    ? refuse('FIGURE_UNVERIFIED', { figure: unverified })
    : null

const parked = (state: OrderState, step: Step): Refusal | null => {
  const { wheel } = step
  const trouble = wheel === null ? null : parkedBy(state, step)
  return wheel === null || trouble === null
    ? null
    : refuse('WHEEL_PARKED', { wheel, what: trouble.what, waitsFor: trouble.waitsFor })
}

/** Reasons against a step from the vehicle, its findings and its wheels, by the kind of entry that would close it. */
const heldByWork = (state: OrderState, step: Step): Refusal | null => {
  const { wheel } = step
  switch (step.closedBy) {
    case 'wheel.removed':
      return arrivalIncomplete(state) ?? wheelHeld(state, step) ?? alreadyOff(state, step)
    case 'wheel.mounted':
      return wheel === null || wheelStatus(state, wheel) === 'off' ? null : refuse('WHEEL_NOT_OFF', { wheel })
    case 'pressure.set':
      // What was found at the wheel that came off says nothing of the spare.
      if (wheel !== null && isSpareOn(state, wheel)) return noSheet(state)
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
      if (step.code === 'repair-fastener') return stillOn(state, step)
      if (step.code === 'repair-leak') return wheel === null ? null : repairRefused(state, wheel)
      return heldByCode(state, step)
    default:
      return null
  }
}

/** A tire that may be damaged inside gets no air, whatever for, until somebody has looked and it is sound. */
const heldByCode = (state: OrderState, step: Step): Refusal | null => {
  if (step.opensTire) return held(state, 'bead-break', step)
  if (bringsAir.has(step.code)) return held(state, 'inflation', step)
  if (step.code === 'lift-vehicle') return arrivalIncomplete(state)
  return step.code === 'lower-to-touching' || step.code === 'lower-fully' ? aWheelOff(state) : null
}

const bringsAir: ReadonlySet<Step['code']> = new Set([
  'find-leak',
  'find-leak-after-look',
  'seat-tire',
  'seat-in-restraint',
  'inflate-tire',
  'inflate-in-restraint',
])

/** A vehicle is not lowered while a hub has no wheel, or one whose fasteners were not started by hand. */
const aWheelOff = (state: OrderState): Refusal | null => {
  const off = roadPositions.find((wheel) => wheelStatus(state, wheel) === 'off')
  return off === undefined ? null : refuse('WHEEL_NOT_TORQUED', { why: 'lowering', wheel: off })
}

const arrivalIncomplete = (state: OrderState): Refusal | null => {
  const [first] = missingOnArrival(state)
  return first ? refuse('ARRIVAL_INCOMPLETE', { before: 'wheel-removal', reason: first }) : null
}

const wheelHeld = (state: OrderState, { wheel }: Pick<Step, 'wheel'>): Refusal | null => {
  const holding = holdingFinding(state, 'wheel-removal', wheel)
  return holding ? refuse('WHEEL_HELD_BY_FINDING', { wheel, finding: holding.code }) : null
}

const held = (state: OrderState, gate: WorkGate, { wheel }: Pick<Step, 'wheel'>): Refusal | null => {
  const holding = holdingFinding(state, gate, wheel)
  return holding ? refuse('WORK_HELD_BY_FINDING', { gate, wheel, finding: holding.code }) : null
}

const alreadyOff = (state: OrderState, { wheel }: Step): Refusal | null =>
  wheel !== null && state.work[wheel]?.removed && wheelStatus(state, wheel) === 'off'
    ? refuse('WHEEL_ALREADY_OFF', { wheel })
    : null

const noSheet = (state: OrderState): Refusal | null =>
  state.sheet ? null : refuse('STEP_OUT_OF_ORDER', { why: 'no-sheet' })

const stillOn = (state: OrderState, { wheel }: Step): Refusal | null =>
  wheel === null || wheelStatus(state, wheel) === 'off' ? null : refuse('WHEEL_NOT_OFF', { wheel })

const stillOff = (state: OrderState, { wheel }: Step): Refusal | null =>
  wheel !== null && wheelStatus(state, wheel) === 'off'
    ? refuse('WHEEL_NOT_TORQUED', { why: 'off', wheel })
    : null

const notTorqued = (state: OrderState, { wheel }: Step): Refusal | null =>
  wheel === null || state.work[wheel]?.rounds.again
    ? null
    : refuse('WHEEL_NOT_TORQUED', { why: 'not-torqued', wheel })

const learnsOnTheRoad = (state: OrderState): boolean => relearnOf(state.sheet?.sheet)?.method === 'automatic'

/** The road gate as a refusal, for everything that moves the vehicle on the road. */
export const roadShut = (state: OrderState): Refusal | null => {
  const [first] = roadGate(state)
  return first ? refuse('ROAD_GATE_CLOSED', { reason: first }) : null
}

const noConsentToDrive = (state: OrderState): Refusal | null =>
  state.authority.drive ? null : refuse('AUTHORITY_MISSING', { to: 'drive' })
