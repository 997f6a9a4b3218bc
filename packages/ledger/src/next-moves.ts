import { type WheelPosition, wheelNames } from '@bayledger/reckoning/wheels'
import {
  authorizedBundles,
  missingOnArrival,
  openSteps,
  proofOf,
  readySteps,
  roadGate,
  wheelStand,
  wheelsThatCameOff,
} from './gates.ts'
import type { OrderState, Written } from './order-state.ts'

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
  const wheels = insecureWheels(state)
  const main = mainMove(state, now)
  return [...wheels, ...(wheels.some(({ code }) => code === main.code) ? [] : [main])]
}

/** A wheel off, untorqued or unchecked is shown beside any other move, and before it. */
const insecureWheels = (state: OrderState): Move[] =>
  wheelsThatCameOff(state).flatMap((wheel): Move[] => {
    const work = state.work[wheel]
    const stand = wheelStand(work)
    const name = capital(wheelNames[wheel])
    if (stand === 'unchecked')
      return [
        move(
          'torque-check',
          'torque-check',
          `Second person: ${wheelNames[wheel]} is torqued and unchecked.`,
          work?.rounds.again?.written,
          wheel,
        ),
      ]
    if (stand === 'off')
      return [move('bay', 'wheel-off', `${name} wheel is off.`, work?.removed?.written, wheel)]
    if (stand === 'untorqued')
      return [
        move('bay', 'wheel-untorqued', `${name} wheel is on and not torqued.`, work?.mounted?.written, wheel),
      ]
    return []
  })

const mainMove = (state: OrderState, now: string): Move => {
  const { diagnosis } = state
  const stops = (diagnosis?.diagnosis.findings ?? []).filter(
    ({ kind, code }) => kind === 'stop' && !state.stopsTold[code],
  )
  const [stop] = stops
  if (diagnosis && !diagnosis.outdated && stop && state.reports.length === 0)
    return move('desk', 'stop-untold', `Call the customer now: ${stop.customer}`, diagnosis.written)
  if (Object.values(state.work).some((work) => work.broken && !work.fitted))
    return move(
      'manager',
      'sensor-broken',
      'A working sensor was broken in our hands: decide with the customer.',
      null,
    )
  if (state.wait && state.wait.until > now)
    return {
      ...move('waiting-until', 'wait', waitWords[state.wait.reason], state.wait.written),
      until: state.wait.until,
    }
  const desk = missingAtDesk(state)
  if (desk) return desk
  if (!diagnosis || diagnosis.outdated) {
    const missing = missingOnArrival(state)
    const since = state.authority.look?.written ?? null
    if (missing.length > 0)
      return move(
        'bay',
        'arrival-check',
        missing.length === 1
          ? (missing[0]?.words ?? '')
          : `Arrival check: ${missing.length} things left. ${missing[0]?.words ?? ''}`,
        since,
        missing[0]?.wheel ?? null,
      )
    return move(
      'bay',
      'findings-uncomputed',
      diagnosis
        ? 'The readings changed: look at the findings again.'
        : 'Everything is read: see the findings.',
      since,
    )
  }
  if (!diagnosis.confirmed)
    return move('bay', 'findings-unconfirmed', 'Confirm the findings.', diagnosis.written)
  return afterFindings(state, diagnosis.confirmed.written)
}

const afterFindings = (state: OrderState, confirmed: Written): Move => {
  const issued = state.estimates.at(-1)
  const offers = (state.diagnosis?.diagnosis.findings ?? []).some((finding) => finding.offers.length > 0)
  if (offers && (!issued || issued.diagnosisId !== state.diagnosis?.written.entryId))
    return move('desk', 'estimate-missing', 'Build the estimate from the findings.', confirmed)
  if (issued) {
    const unanswered = issued.estimate.bundles.filter(
      ({ bundleKey }) => state.answers[bundleKey]?.revision === undefined,
    )
    if (unanswered.length > 0)
      return issued.shown.length > 0
        ? move(
            'customer',
            'estimate-unanswered',
            'Waiting for the customer to answer the estimate.',
            issued.shown.at(-1)?.written ?? null,
          )
        : move('desk', 'estimate-unshown', 'Show the estimate to the customer.', issued.written)
  }
  return workMove(state)
}

const workMove = (state: OrderState): Move => {
  if (state.promised)
    return {
      ...move(
        'parts',
        'part-promised',
        `Waiting for the part ${state.promised.partCode}.`,
        state.promised.written,
      ),
      until: state.promised.promisedAt,
    }
  const ready = readySteps(state)
  const since = lastWritten(state)
  const work = ready.find((step) => step.closedBy !== 'torque.checked' && step.closedBy !== 'drive.done')
  if (work)
    return move(
      'bay',
      'step-open',
      `${work.does}${work.wheel ? `, ${wheelNames[work.wheel]}` : ''}.`,
      since,
      work.wheel,
    )
  const check = ready.find((step) => step.closedBy === 'torque.checked')
  if (check) return move('torque-check', 'torque-check', `Second person: ${check.does}.`, since, check.wheel)
  const drive = ready.find((step) => step.closedBy === 'drive.done')
  if (drive) return move('out-on-the-road', 'drive-open', driveWords(state), since)
  if (openSteps(state).length > 0)
    return move('bay', 'step-blocked', 'The next step waits for another; open the job plan.', since)
  if (state.reports.length === 0) {
    const owed =
      authorizedBundles(state).reduce((sum, { totals }) => sum + totals.totalCents, 0) - state.paidCents
    return roadGate(state).length > 0
      ? move('desk', 'road-gate', roadGate(state)[0]?.words ?? '', since)
      : move(
          'desk',
          'report-unsealed',
          owed > 0 ? 'Note the payment and seal the report.' : 'Seal the report.',
          since,
        )
  }
  return move('desk', 'keys', 'Hand back the vehicle.', state.reports.at(-1)?.written ?? null)
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

const lastWritten = (state: OrderState): Written | null => state.marks.at(-1) ?? null

const endOf = (state: OrderState): Written | null => state.handedBack?.written ?? state.ended?.written ?? null

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

const move = (
  mover: Mover,
  code: string,
  sentence: string,
  since: Written | null | undefined,
  wheel: WheelPosition | null = null,
): Move => ({ mover, code, wheel, sentence, since: since?.writtenAt ?? null, until: null })
