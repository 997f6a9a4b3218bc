import { type GaugingEvery, gaugingAskedBy } from '@bayledger/reckoning/cautions/gauging-asked'
import type { Work } from '@bayledger/reckoning/estimate'
import { roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { IssuedBundle, OrderState } from '../state.ts'
import { answerTo, newestBundles } from './answers.ts'
import { pressureAsLeft } from './as-left.ts'
import { dangersOf, isNotRepaired, isUnsafeToTake } from './dangers.ts'
import type { GateReason } from './gate-reason.ts'
import { authorizedBundles, placardPsi, proofOf, roadGate, wheelStatus } from './gates.ts'
import { lowAsLeft } from './low-wheels.ts'
import type { Failure } from './proof.ts'
import { isSpareOn } from './spare-on.ts'
import { isStoredAt } from './stored-id.ts'

/** The answer to "Can I drive it?", decided once for the desk, the telephone and the report. */
export type DriveVerdict =
  | 'drive-normally'
  | 'check-weekly'
  | 'check-each-trip'
  | 'on-the-spare'
  | 'do-not-drive'

/** The careful answer wherever a fact is missing. */
export const mayDrive = (state: OrderState): DriveVerdict => {
  // A refusal on record lets the customer take the vehicle; it does not make it safe.
  const spare = spareInUse(state)
  const kept = roadGate({ ...state, refusals: {} }).filter((reason) => !isOfWheel(state, reason, spare))
  if (kept.length > 0) return 'do-not-drive'
  // What must be repaired before the keys go back is not driven either.
  if (dangersOf(state).some(isUnsafeToTake)) return 'do-not-drive'
  // Without a diagnosis no report may say yes.
  if (!state.diagnosis) return 'do-not-drive'
  return spare === null ? driveBy[gaugingDue(state).every] : 'on-the-spare'
}

/** The wheel in whose place the spare is on, torqued and checked. */
export const spareInUse = (state: OrderState): WheelPosition | null =>
  roadPositions.find((wheel) => isSpareOn(state, wheel) && wheelStatus(state, wheel) === 'secured') ?? null

/** A reason that concerns only the wheel that the spare has replaced. */
const isOfWheel = (state: OrderState, reason: GateReason, wheel: WheelPosition | null): boolean => {
  if (wheel === null) return false
  if (reason.code === 'wheel-parked') return reason.wheel === wheel
  if (reason.code !== 'stop-open') return false
  const finding = state.diagnosis?.diagnosis.findings.find(({ code }) => code === reason.values.finding)
  return finding?.wheels.length === 1 && finding.wheels[0] === wheel
}

/** How often the customer gauges the tires, and the reason where it is more often than each month. */
export type Gauging =
  | { readonly every: 'month'; readonly why: null }
  | { readonly every: GaugingEvery; readonly why: GaugingReason }

export type GaugingReason =
  | 'tire-low'
  | 'cannot-warn'
  | 'safety-left'
  | 'work-left'
  | 'not-gauged'
  | 'not-proven'
  | 'cause-not-found'

const driveBy: Readonly<Record<Gauging['every'], DriveVerdict>> = {
  trip: 'check-each-trip',
  week: 'check-weekly',
  month: 'drive-normally',
}

/** Never less often than a caution says that was shown with a No or Not today, or would be shown with it. */
export const gaugingDue = (state: OrderState): Gauging => {
  const shown = openCautions(state).flatMap((caution) => gaugingAskedBy(caution) ?? [])
  const [why = null] = reasonsToGauge(state)
  if (shown.includes('trip')) return { every: 'trip', why: why ?? 'work-left' }
  if (why !== null) return { every: 'week', why }
  return shown.includes('week') ? { every: 'week', why: 'work-left' } : { every: 'month', why: null }
}

const openCautions = (state: OrderState) =>
  newestBundles(state).flatMap((bundle) => {
    const decision = answerTo(state, bundle)
    if (decision === null) return bundle.cautions
    return decision.answer === 'authorized' ? [] : decision.cautionsShown
  })

/** The reasons that hold, the one that concerns safety most first. */
const reasonsToGauge = (state: OrderState): GaugingReason[] => {
  const low = lowAsLeft(state).some(({ wheel }) => wheel !== 'SP')
  const fixed = isFixed(state)
  const isUnfound =
    fixed.verdict === 'not-yet-proven' && (fixed.why === 'nothing-found' || fixed.why === 'no-findings')
  const isAboutNoLight = isUnfound && fixed.why === 'nothing-found' && lightStayedOff(state)
  return [
    ...(low ? (['tire-low'] as const) : []),
    ...(state.diagnosis?.diagnosis.findings.some(({ code }) => code === 'telltale-dark') ||
    fixed.verdict === 'not-fixed'
      ? (['cannot-warn'] as const)
      : []),
    ...(safetyLeftUndone(state) ? (['safety-left'] as const) : []),
    ...(roadPositions.some((wheel) => isUnknown(state, wheel)) ? (['not-gauged'] as const) : []),
    ...(isUnfound && !isAboutNoLight ? (['cause-not-found'] as const) : []),
    ...(fixed.verdict === 'not-yet-proven' && !isAboutNoLight ? (['not-proven'] as const) : []),
  ]
}

/** The customer came for something else, and we saw no light either: there is no cause of a light that was not found. */
const lightStayedOff = ({ complaint, arrival }: OrderState): boolean =>
  complaint?.reportedLight === 'off' && arrival.telltale?.behavior === 'off'

const safetyLeftUndone = (state: OrderState): boolean =>
  newestBundles(state).some((bundle) => bundle.safety && !isDone(state, bundle))

/** Authorized itself, or its alternative is. */
const isDone = (state: OrderState, bundle: IssuedBundle): boolean =>
  authorizedBundles(state).some(
    ({ bundleKey, alternativeTo }) =>
      bundleKey === bundle.bundleKey ||
      alternativeTo === bundle.bundleKey ||
      bundle.alternativeTo === bundleKey,
  )

const isUnknown = (state: OrderState, wheel: WheelPosition): boolean =>
  (pressureAsLeft(state, wheel) ?? state.arrival.wheels[wheel]?.gauge ?? null) === null ||
  placardPsi(state, wheel) === null

/** The answer to "Is it fixed, and how do we know?" */
export type FixedVerdict =
  /** `sensors`: how many the vehicle is shown to recognize; `null` where it has none to recognize. */
  | { readonly verdict: 'proven'; readonly minutes: number; readonly sensors: number | null }
  | { readonly verdict: 'not-yet-proven'; readonly why: 'relearn-set-aside' }
  | {
      readonly verdict: 'not-yet-proven'
      readonly why: 'not-driven-enough' | 'drive-doubtful'
      readonly minutes: number
      readonly needed: number
    }
  | { readonly verdict: 'not-yet-proven'; readonly why: 'no-findings' | 'nothing-found' }
  | {
      readonly verdict: 'not-yet-proven'
      readonly why: 'sensors-unrecognized'
      readonly minutes: number
      readonly recognized: number
      readonly sensors: number
    }
  | { readonly verdict: 'not-fixed'; readonly why: 'nothing-authorized' | 'danger-left' }
  | ({ readonly verdict: 'not-fixed' } & Failure)

/** One of three: proven, not yet proven, not fixed. */
export const isFixed = (state: OrderState): FixedVerdict => {
  if (dangersOf(state).some(isNotRepaired)) return { verdict: 'not-fixed', why: 'danger-left' }
  const proof = proofOf(state)
  switch (proof.verdict) {
    case 'not-fixed':
      return proof
    case 'not-yet-proven':
      return proof.why === 'relearn-set-aside'
        ? { verdict: proof.verdict, why: proof.why }
        : { verdict: proof.verdict, why: proof.why, minutes: proof.minutes, needed: proof.needed }
    case 'nothing-to-prove':
      if (!state.diagnosis) return { verdict: 'not-yet-proven', why: 'no-findings' }
      return state.diagnosis.diagnosis.primary
        ? { verdict: 'not-fixed', why: 'nothing-authorized' }
        : { verdict: 'not-yet-proven', why: 'nothing-found' }
    case 'proven':
      return provenWith(state, proof.minutes)
  }
}

const provenWith = (state: OrderState, minutes: number): FixedVerdict => {
  if (state.sheet?.sheet.system !== 'direct') return { verdict: 'proven', minutes, sensors: null }
  const monitored = monitoredWheels(state)
  const sensors = monitored.length
  const recognized = monitored.filter((wheel) => isRecognized(state, wheel)).length
  return recognized === sensors
    ? { verdict: 'proven', minutes, sensors }
    : { verdict: 'not-yet-proven', why: 'sensors-unrecognized', minutes, recognized, sensors }
}

const monitoredWheels = (state: OrderState): readonly WheelPosition[] =>
  state.sheet?.sheet.spareMonitored ? [...roadPositions, 'SP'] : roadPositions

/** The vehicle's last reading holds the wheel's ID at its place, or the vehicle confirmed the wheel at the relearn. */
const isRecognized = (state: OrderState, wheel: WheelPosition): boolean => {
  if (state.closing.module?.state === 'read') {
    const id =
      idOf(state, wheel, 'closing') ?? state.work[wheel]?.fitted?.sensorId ?? idOf(state, wheel, 'arrival')
    return isStoredAt(state.closing.module, wheel, id)
  }
  if (state.relearn) return state.relearn.result === 'learned' && state.relearn.confirmed.includes(wheel)
  const changesIds = authorizedBundles(state).some(({ works }) =>
    works.some(({ kind }) => changingIds.has(kind)),
  )
  return !changesIds && isStoredAt(state.arrival.module, wheel, idOf(state, wheel, 'arrival'))
}

const changingIds: ReadonlySet<Work['kind']> = new Set(['fit-sensor', 'relearn', 'rotate', 'swap-wheels'])

const idOf = (state: OrderState, wheel: WheelPosition, phase: 'arrival' | 'closing'): string | null => {
  const reading = state[phase].wheels[wheel]?.sensor?.reading
  return reading?.answer === 'answered' ? reading.id : null
}
