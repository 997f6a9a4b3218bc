import { isConditional } from '@bayledger/reckoning/money/added-bundles'
import { namedStep } from '@bayledger/reckoning/step'
import type { OrderState, Written } from '../state.ts'
import { authorizedBundles, unansweredBundles } from './answers.ts'
import { openConflicts } from './conflicts.ts'
import { untoldStops } from './dangers.ts'
import { doubtedDrives, doubtOf } from './drive-clock.ts'
import { estimateIsMissing } from './estimate-is-missing.ts'
import {
  brokenSensors,
  insecureWheels,
  missingOnArrival,
  openSteps,
  readySteps,
  sealGate,
  wheelStatus,
} from './gates.ts'
import { handleWithCare } from './handle-with-care.ts'
import { lookIsOwed } from './look-is-owed.ts'
import { type Move, move } from './move.ts'
import { minutesToDrive, proofOf } from './proof.ts'
import { confirmedDiagnosis } from './told-findings.ts'
import { leavesBy, openTroubles, parkedBy } from './troubles.ts'

/**
 * What the order waits for. The first one ranks it on the floor list, and all are shown. `now` only decides whether a
 * named wait has run out and whether a promise has passed; nothing is ever written because time passed.
 */
export const nextMoves = (state: OrderState, now: string): Move[] => {
  if (state.ended || state.handedBack) return [move('nobody', 'finished', {}, endOf(state))]
  const parked = parkedMoves(state)
  const wheels = wheelMoves(state).filter(({ wheel }) => !parked.some((one) => one.wheel === wheel))
  const others = otherMoves(state, now)
  return [
    ...parked,
    ...wheels,
    ...others.filter(({ code }) => !wheels.some((shown) => shown.code === code)),
    ...careMoves(state),
  ]
}

/** Last, so that they rank no order: they are cautions to read and nothing to wait for. */
const careMoves = (state: OrderState): Move[] =>
  handleWithCare(state).map((care) => move('bay', 'handle-with-care', care, null, care.wheels[0] ?? null))

/** What is not right at a wheel, until the customer has answered: the bay can do nothing there meanwhile. */
const parkedMoves = (state: OrderState): Move[] =>
  state.reports.length > 0
    ? []
    : openTroubles(state)
        .filter(
          (trouble) =>
            trouble.waitsFor === 'answer' && leavesBy(state, trouble) === null && trouble.since > 0,
        )
        .map(({ wheel, what, waitsFor, written }) =>
          move('desk', 'wheel-parked', { what, waitsFor }, written, wheel),
        )

/** A wheel off, untorqued or unchecked is shown beside any other move, and before it. */
const wheelMoves = (state: OrderState): Move[] =>
  insecureWheels(state).map((wheel): Move => {
    const work = state.work[wheel]
    const status = wheelStatus(state, wheel)
    if (status === 'unchecked')
      return move('torque-check', 'torque-check', { step: null }, work?.rounds.again?.written, wheel)
    return status === 'off'
      ? move('bay', 'wheel-off', {}, work?.removed?.written, wheel)
      : move('bay', 'wheel-untorqued', {}, work?.mounted?.written, wheel)
  })

/** The first move that applies apart from insecure wheels, and what may go on beside it. */
const otherMoves = (state: OrderState, now: string): Move[] => {
  const first = stopMove(state) ?? brokenMove(state) ?? waitMove(state, now) ?? missingAtDesk(state)
  if (first) return [first]
  const arrival = arrivalMove(state)
  return arrival ? [arrival] : afterFindings(state)
}

/** A stop that the customer was not told about. */
const stopMove = (state: OrderState): Move | null => {
  const [untold] = state.reports.length > 0 ? [] : untoldStops(state)
  return untold
    ? move(
        'desk',
        'stop-untold',
        { finding: untold.code, wheels: untold.wheels },
        state.diagnosis?.written ?? null,
      )
    : null
}

const brokenMove = (state: OrderState): Move | null => {
  const [wheel] = brokenSensors(state)
  return wheel ? move('manager', 'sensor-broken', {}, state.work[wheel]?.broken?.written, wheel) : null
}

const waitMove = ({ wait }: OrderState, now: string): Move | null =>
  wait && wait.until > now
    ? { ...move('waiting-until', 'wait', { reason: wait.reason }, wait.written), until: wait.until }
    : null

/** What the bay must do before an estimate can be made: the arrival check, the findings, their confirmation. */
const arrivalMove = (state: OrderState): Move | null => {
  const { diagnosis } = state
  if (confirmedDiagnosis(state)) return null
  const since = state.authority.look?.written ?? null
  const missing = missingOnArrival(state)
  const [first] = missing
  if (first) return move('bay', 'arrival-check', { left: missing.length, first }, since, first.wheel)
  const [conflict] = openConflicts(state)
  if (conflict)
    return move(
      'bay',
      'recorded-twice',
      { fact: conflict.fact, phase: conflict.phase },
      conflict.records.at(-1) ?? since,
      conflict.wheel,
    )
  if (!diagnosis) return move('bay', 'findings-uncomputed', { changed: false }, since)
  return diagnosis.outdated
    ? move('bay', 'findings-uncomputed', { changed: true }, since)
    : move('bay', 'findings-unconfirmed', {}, diagnosis.written)
}

/** Two moves at once where the customer still decides on one part while the bay works on another. */
const afterFindings = (state: OrderState): Move[] => {
  const estimate = causeMove(state) ?? estimateMove(state)
  if (!estimate) return workMoves(state)
  return readySteps(state).length > 0 ? [estimate, ...workMoves(state)] : [estimate]
}

/** Nobody has said yet why it came back after our work: the warranty and the price depend on it. */
const causeMove = ({ opened, comeback, diagnosis, reports }: OrderState): Move | null =>
  opened?.comebackOf && comeback === null && reports.length === 0
    ? move('desk', 'comeback-cause-missing', {}, diagnosis?.confirmed?.written)
    : null

const estimateMove = (state: OrderState): Move | null => {
  const issued = state.estimates.at(-1)
  if (estimateIsMissing(state))
    return move('desk', 'estimate-missing', {}, state.diagnosis?.confirmed?.written)
  if (!issued || unansweredBundles(state).length === 0) return null
  return issued.shown.length > 0
    ? move('customer', 'estimate-unanswered', {}, issued.shown.at(-1)?.written)
    : move('desk', 'estimate-unshown', {}, issued.written)
}

const workMoves = (state: OrderState): Move[] => {
  if (state.promised) {
    const { partCode, promisedAt, written } = state.promised
    const parts = move('parts', 'part-promised', { partCode }, written)
    return [{ ...parts, until: promisedAt }]
  }
  const ready = readySteps(state).filter((step) => parkedBy(state, step) === null)
  const since = state.marks.at(-1)
  const check = ready.find(({ closedBy }) => closedBy === 'torque.checked')
  const work = ready.find(({ closedBy }) => closedBy !== 'drive.done' && closedBy !== 'torque.checked')
  const inTheBay = [
    ...(check ? [move('torque-check', 'torque-check', { step: namedStep(check) }, since, check.wheel)] : []),
    ...(work ? [move('bay', 'step-open', { step: namedStep(work) }, since, work.wheel)] : []),
  ]
  if (inTheBay.length > 0) return inTheBay
  if (ready.length > 0)
    return [
      move(
        'out-on-the-road',
        'drive-open',
        { minutes: drivenMinutes(state), needed: minutesToDrive(state) },
        since,
      ),
      ...doubtMoves(state),
    ]
  if (openSteps(state).length > 0) return [move('bay', 'step-blocked', {}, since)]
  const sealed = state.reports.at(-1)
  if (sealed === undefined) return [...doubtMoves(state), sealMove(state, since)]
  return [
    isUnpaid(state)
      ? move('desk', 'payment-open', { sealed: true }, sealed.written)
      : move('desk', 'keys', {}, sealed.written),
  ]
}

/** Something is owed, and nothing was noted of it, not even that nothing is due. */
const isUnpaid = (state: OrderState): boolean =>
  state.payments.length === 0 &&
  (authorizedBundles(state).some((bundle) => !isConditional(bundle)) || lookIsOwed(state))

/** The desk settles minutes that the clock contradicts; the bay may drive again instead. */
const doubtMoves = (state: OrderState): Move[] =>
  doubtedDrives(state).flatMap(({ written }) => {
    const doubt = doubtOf(state, written.entryId)
    return doubt ? [move('desk', 'drive-doubtful', doubt, written)] : []
  })

const sealMove = (state: OrderState, since: Written | undefined): Move => {
  const [conflict] = openConflicts(state)
  if (conflict)
    return move(
      'bay',
      'recorded-twice',
      { fact: conflict.fact, phase: conflict.phase },
      conflict.records.at(-1),
      conflict.wheel,
    )
  const [shut] = sealGate(state)
  if (shut) return move('desk', 'seal-gate', { reason: shut }, since, shut.wheel)
  return isUnpaid(state)
    ? move('desk', 'payment-open', { sealed: false }, since)
    : move('desk', 'report-unsealed', {}, since)
}

/** Minutes already driven of a proof drive that must go on; 0 if it has to start, or start again. */
const drivenMinutes = (state: OrderState): number => {
  const proof = proofOf(state)
  return proof.verdict === 'not-yet-proven' ? proof.minutes : 0
}

const missingAtDesk = (state: OrderState): Move | null => {
  const since = state.opened?.written ?? null
  if (!state.complaint) return move('desk', 'complaint', {}, since)
  if (!state.sheet) return move('desk', 'sheet', {}, since)
  if (!state.authority.look) return move('desk', 'authority', {}, since)
  return null
}

const endOf = (state: OrderState): Written | null => state.handedBack?.written ?? state.ended?.written ?? null
