import type { Step } from '@bayledger/reckoning/step'
import { type WheelPosition, wheelNames } from '@bayledger/reckoning/wheels'
import type { OrderState, Written } from '../state.ts'
import { authorizedBundles, unansweredBundles } from './answers.ts'
import { conflictWords, openConflicts } from './conflict-words.ts'
import {
  brokenSensors,
  insecureWheels,
  missingOnArrival,
  openSteps,
  readySteps,
  sealGate,
  wheelStatus,
} from './gates.ts'
import { offersOf } from './offers-of.ts'
import { proofOf } from './proof.ts'

/** Who must act next. Computed, never set: a status set by hand lies by lunchtime. */
export type Mover =
  | 'desk'
  | 'manager'
  | 'bay'
  | 'torque-check'
  | 'parts'
  | 'customer'
  | 'out-on-the-road'
  | 'waiting-until'
  | 'nobody'

/** One thing an order waits for. `since` is when the wait began; `until` only where somebody named a time. */
export type Move = {
  readonly mover: Mover
  readonly code: string
  readonly wheel: WheelPosition | null
  readonly sentence: string
  readonly since: string | null
  readonly until: string | null
}

/**
 * What the order waits for, the first ranking it on the floor list, all of them shown. `now` only decides whether
 * a named wait has run out and whether a promise has passed; nothing is ever written because time passed.
 */
export const nextMoves = (state: OrderState, now: string): Move[] => {
  if (state.ended || state.handedBack) return [move('nobody', 'finished', 'Finished.', endOf(state))]
  const wheels = wheelMoves(state)
  const others = otherMoves(state, now)
  return [...wheels, ...others.filter(({ code }) => !wheels.some((shown) => shown.code === code))]
}

/** A wheel off, untorqued or unchecked is shown beside any other move, and before it. */
const wheelMoves = (state: OrderState): Move[] =>
  insecureWheels(state).map((wheel): Move => {
    const work = state.work[wheel]
    const status = wheelStatus(state, wheel)
    const name = capital(wheelNames[wheel])
    if (status === 'unchecked')
      return move(
        'torque-check',
        'torque-check',
        `Second person: ${wheelNames[wheel]} is torqued and unchecked.`,
        work?.rounds.again?.written,
        wheel,
      )
    return status === 'off'
      ? move('bay', 'wheel-off', `${name} wheel is off.`, work?.removed?.written, wheel)
      : move('bay', 'wheel-untorqued', `${name} wheel is on and not torqued.`, work?.mounted?.written, wheel)
  })

/** Of everything but insecure wheels: the first that is true, and what may go on beside it. */
const otherMoves = (state: OrderState, now: string): Move[] => {
  const first = stopMove(state) ?? brokenMove(state) ?? waitMove(state, now) ?? missingAtDesk(state)
  if (first) return [first]
  const arrival = arrivalMove(state)
  return arrival ? [arrival] : afterFindings(state)
}

/** A stop that the customer was not told of, or told of other wheels only. */
const stopMove = ({ diagnosis, stopsTold, refusals, reports }: OrderState): Move | null => {
  if (!diagnosis || reports.length > 0) return null
  const untold = diagnosis.diagnosis.findings.find(
    ({ kind, code, wheels }) =>
      kind === 'stop' &&
      !refusals[code] &&
      !(stopsTold[code] && wheels.every((wheel) => stopsTold[code]?.wheels.includes(wheel))),
  )
  return untold
    ? move(
        'desk',
        'stop-untold',
        `Call the customer now: ${untold.code.replaceAll('-', ' ')}.`,
        diagnosis.written,
      )
    : null
}

const brokenMove = (state: OrderState): Move | null => {
  const [wheel] = brokenSensors(state)
  return wheel
    ? move(
        'manager',
        'sensor-broken',
        `The working ${wheelNames[wheel]} sensor was broken in our hands: decide with the customer.`,
        state.work[wheel]?.broken?.written,
        wheel,
      )
    : null
}

const waitMove = ({ wait }: OrderState, now: string): Move | null =>
  wait && wait.until > now
    ? { ...move('waiting-until', 'wait', waitWords[wait.reason], wait.written), until: wait.until }
    : null

/** What the bay owes before an estimate can be built: the arrival check, the findings, their confirmation. */
const arrivalMove = (state: OrderState): Move | null => {
  const { diagnosis } = state
  if (diagnosis?.confirmed && !diagnosis.outdated) return null
  const since = state.authority.look?.written ?? null
  const missing = missingOnArrival(state)
  const [first] = missing
  if (first)
    return move(
      'bay',
      'arrival-check',
      missing.length === 1 ? first.words : `Arrival check: ${missing.length} things left. ${first.words}`,
      since,
      first.wheel,
    )
  const [conflict] = openConflicts(state)
  if (conflict)
    return move(
      'bay',
      'recorded-twice',
      conflictWords(conflict),
      conflict.records.at(-1) ?? since,
      conflict.wheel,
    )
  if (!diagnosis) return move('bay', 'findings-uncomputed', 'Everything is read: see the findings.', since)
  return diagnosis.outdated
    ? move('bay', 'findings-uncomputed', 'The readings changed: look at the findings again.', since)
    : move('bay', 'findings-unconfirmed', 'Confirm the findings.', diagnosis.written)
}

/** Two moves at once where the customer still decides on one part while the bay works on another. */
const afterFindings = (state: OrderState): Move[] => {
  const estimate = estimateMove(state)
  if (!estimate) return workMoves(state)
  return readySteps(state).length > 0 ? [estimate, ...workMoves(state)] : [estimate]
}

const estimateMove = (state: OrderState): Move | null => {
  const issued = state.estimates.at(-1)
  const diagnosis = state.diagnosis?.diagnosis
  const offered = (diagnosis?.findings ?? []).some(({ offers }) => offers.length > 0)
  if (offered && issued?.offers !== offersOf(diagnosis))
    return move(
      'desk',
      'estimate-missing',
      'Build the estimate from the findings.',
      state.diagnosis?.confirmed?.written,
    )
  if (!issued || unansweredBundles(state).length === 0) return null
  return issued.shown.length > 0
    ? move(
        'customer',
        'estimate-unanswered',
        'Waiting for the customer to answer the estimate.',
        issued.shown.at(-1)?.written,
      )
    : move('desk', 'estimate-unshown', 'Show the estimate to the customer.', issued.written)
}

const workMoves = (state: OrderState): Move[] => {
  if (state.promised) {
    const { partCode, promisedAt, written } = state.promised
    const parts = move('parts', 'part-promised', `Waiting for the part ${partCode}.`, written)
    return [{ ...parts, until: promisedAt }]
  }
  const ready = readySteps(state)
  const since = state.marks.at(-1)
  const check = ready.find(({ closedBy }) => closedBy === 'torque.checked')
  const work = ready.find(({ closedBy }) => closedBy !== 'drive.done' && closedBy !== 'torque.checked')
  const inTheBay = [
    ...(check
      ? [
          move(
            'torque-check',
            'torque-check',
            `Second person: ${check.code.replaceAll('-', ' ')}.`,
            since,
            check.wheel,
          ),
        ]
      : []),
    ...(work ? [move('bay', 'step-open', stepWords(work), since, work.wheel)] : []),
  ]
  if (inTheBay.length > 0) return inTheBay
  if (ready.length > 0) return [move('out-on-the-road', 'drive-open', driveWords(state), since)]
  if (openSteps(state).length > 0)
    return [move('bay', 'step-blocked', 'The next step waits for another; open the job plan.', since)]
  return [
    state.reports.length > 0
      ? move('desk', 'keys', 'Hand back the vehicle.', state.reports.at(-1)?.written)
      : sealMove(state, since),
  ]
}

const stepWords = ({ code, wheel }: Step): string =>
  `${code.replaceAll('-', ' ')}${wheel ? `, ${wheelNames[wheel]}` : ''}.`

const sealMove = (state: OrderState, since: Written | undefined): Move => {
  const [conflict] = openConflicts(state)
  if (conflict)
    return move('bay', 'recorded-twice', conflictWords(conflict), conflict.records.at(-1), conflict.wheel)
  const [shut] = sealGate(state)
  if (shut) return move('desk', 'seal-gate', shut.words, since, shut.wheel)
  return authorizedBundles(state).length > 0 && state.payments.length === 0
    ? move('desk', 'payment-open', 'Note the payment and seal the report.', since)
    : move('desk', 'report-unsealed', 'Seal the report.', since)
}

const driveWords = (state: OrderState): string => {
  const proof = proofOf(state)
  const minutes = state.drives.reduce((sum, drive) => sum + drive.minutes, 0)
  return proof.verdict === 'not-yet-proven' && minutes > 0
    ? `Proof drive: ${minutes} minutes driven, more to come.`
    : 'Proof drive: 20 minutes, then watch the light.'
}

const missingAtDesk = (state: OrderState): Move | null => {
  const since = state.opened?.written ?? null
  if (!state.complaint) return move('desk', 'complaint', 'Write down the complaint.', since)
  if (!state.sheet) return move('desk', 'sheet', 'Choose the specification sheet.', since)
  if (!state.authority.look) return move('desk', 'authority', 'Get consent to look.', since)
  return null
}

const waitWords = {
  'cooling-down': 'Waiting for the tires to cool.',
  'customer-returns': 'Waiting for the customer to return.',
  weather: 'Waiting for the weather.',
  part: 'Waiting for a part.',
  'trial-drive': 'The customer drives without the added devices.',
} as const

const endOf = (state: OrderState): Written | null => state.handedBack?.written ?? state.ended?.written ?? null

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

const move = (
  mover: Mover,
  code: string,
  sentence: string,
  since: Written | null | undefined,
  wheel: WheelPosition | null = null,
): Move => ({ mover, code, wheel, sentence, since: since?.writtenAt ?? null, until: null })
