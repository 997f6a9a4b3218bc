import {
  axleOf,
  inReadingOrder,
  roadPositions,
  type WheelPosition,
  wheelNames,
} from '@bayledger/reckoning/wheels'
import type { Author } from './entry.ts'
import type { OrderState, WheelWork } from './order-state.ts'

/** A gate that is shut says why, in words that name what to do. */
export type GateReason = {
  readonly code: string
  readonly wheel: WheelPosition | null
  readonly words: string
}

/** What is still to be checked before a wheel may come off; "could not be checked" with a reason counts as done. */
export const missingOnArrival = (state: OrderState): GateReason[] => {
  const sheet = state.sheet?.sheet
  if (!sheet) return [reason('sheet', null, 'Choose the specification sheet of this vehicle.')]
  const gauged: readonly WheelPosition[] = sheet.spare === 'none' ? roadPositions : [...roadPositions, 'SP']
  const heard: readonly WheelPosition[] =
    sheet.system !== 'direct' ? [] : sheet.spareMonitored ? [...roadPositions, 'SP'] : roadPositions
  return [
    ...(state.surroundings
      ? []
      : [reason('surroundings', null, 'Record the outdoor temperature and the state of the tires.')]),
    ...(state.arrival.telltale?.behavior && state.arrival.telltale.lampCheck
      ? []
      : [reason('warning-light', null, 'Turn the key on and record what the warning light does.')]),
    ...gauged
      .filter((wheel) => !state.arrival.wheels[wheel]?.gauge && !excused(state, wheel, 'gauge'))
      .map((wheel) => reason('gauge', wheel, `Gauge the ${wheelNames[wheel]} tire.`)),
    ...heard
      .filter((wheel) => !sensorSettled(state, wheel) && !excused(state, wheel, 'answer'))
      .map((wheel) =>
        reason(
          'sensor',
          wheel,
          `Trigger the ${wheelNames[wheel]} sensor; silent counts after two spaced tries.`,
        ),
      ),
    ...(sheet.system !== 'direct' || state.arrival.module
      ? []
      : [
          reason(
            'control-module',
            null,
            'Read what the vehicle has stored, or record why it cannot be read.',
          ),
        ]),
  ]
}

const sensorSettled = (state: OrderState, wheel: WheelPosition): boolean => {
  const sensor = state.arrival.wheels[wheel]?.sensor?.reading
  return sensor?.answer === 'answered' || (sensor?.answer === 'silent' && sensor.tries >= 2)
}

const excused = (state: OrderState, wheel: WheelPosition, field: string): boolean =>
  (state.arrival.wheels[wheel]?.notPossible ?? []).some((entry) => entry.field === field)

/** Wheels that came off in this order, in reading order. */
export const wheelsThatCameOff = (state: OrderState): WheelPosition[] =>
  inReadingOrder((Object.keys(state.work) as WheelPosition[]).filter((wheel) => state.work[wheel]?.removed))

export type WheelStand = 'on' | 'off' | 'untorqued' | 'unchecked' | 'secured'

/** How a wheel stands: off, on without torque, torqued without a second check, or secured. */
export const wheelStand = (work: WheelWork | undefined): WheelStand => {
  if (!work?.removed) return 'on'
  if (!work.mounted) return 'off'
  if (!work.rounds.full || !work.rounds.again) return 'untorqued'
  return work.checked ? 'secured' : 'unchecked'
}

/** Who sealed any torque round of a wheel: none of them may be its second person. */
export const torquedBy = (work: WheelWork | undefined): Author[] =>
  Object.values(work?.rounds ?? {}).map((seal) => seal.written.by)

/** Why the vehicle may not move on the road; empty when it may. */
export const roadGate = (state: OrderState): GateReason[] => [
  ...wheelsThatCameOff(state).flatMap((wheel): GateReason[] => {
    const stand = wheelStand(state.work[wheel])
    const name = wheelNames[wheel]
    if (stand === 'off') return [reason('wheel-off', wheel, `The ${name} wheel is off.`)]
    if (stand === 'untorqued') return [reason('wheel-untorqued', wheel, `The ${name} wheel is not torqued.`)]
    if (stand === 'unchecked')
      return [
        reason(
          'wheel-unchecked',
          wheel,
          `The ${name} wheel is torqued and unchecked: a second person checks it.`,
        ),
      ]
    return []
  }),
  ...openStops(state, 'road').map((stop) =>
    reason(
      'stop-open',
      null,
      `A finding keeps the vehicle off the road: ${stop.replaceAll('-', ' ')}. Settle it or record the refusal.`,
    ),
  ),
  ...state.holds.filter((hold) => hold.gate === 'road').map((hold) => reason(hold.code, null, hold.words)),
]

/** Findings that hold a gate, were not cured by authorized and finished work, and were not refused on record. */
const openStops = (state: OrderState, gate: 'road' | 'hand-back'): string[] =>
  (state.diagnosis?.diagnosis.findings ?? [])
    .filter((finding) => finding.holds.includes(gate) && !state.refusals[finding.code])
    .filter((finding) => !cured(state, finding.code))
    .map((finding) => finding.code)

const cured = (state: OrderState, code: string): boolean => {
  const curing = authorizedBundles(state).filter((bundle) => bundle.findings.includes(code))
  const steps = (state.plan?.plan.steps ?? []).filter((step) =>
    curing.some((bundle) => bundle.bundleKey === step.bundleKey),
  )
  const beforeTheRoad = steps.filter(
    (step) => step.closedBy !== 'drive.done' && step.closedBy !== 'relearn.done',
  )
  return beforeTheRoad.length > 0 && beforeTheRoad.every((step) => state.closed[step.stepKey])
}

/** Bundles of the newest revision that the customer authorized. */
export const authorizedBundles = (state: OrderState) =>
  (state.estimates.at(-1)?.estimate.bundles ?? []).filter(
    (bundle) => state.answers[bundle.bundleKey]?.answer === 'authorized',
  )

/** Steps of the plan that are neither closed nor set aside, in the plan's order. */
export const openSteps = (state: OrderState) =>
  (state.plan?.plan.steps ?? []).filter(
    (step) => !state.closed[step.stepKey] && !state.setAside[step.stepKey],
  )

/** Open steps whose forerunners are all done: what the bay may do next. */
export const readySteps = (state: OrderState) =>
  openSteps(state).filter((step) =>
    step.waitsFor.every((key) => state.closed[key] !== undefined || state.setAside[key] !== undefined),
  )

/** How far it is proven that the light is out and will stay out. */
export type Proof =
  | { readonly verdict: 'proven'; readonly minutes: number }
  | { readonly verdict: 'not-yet-proven'; readonly why: string }
  | { readonly verdict: 'not-fixed'; readonly why: string }
  | { readonly verdict: 'nothing-to-prove' }

/** Minutes of driving after which a warning would have come: 49 CFR 571.138 S4.2 allows the system 20. */
export const proofDriveMinutes = 20

export const proofOf = (state: OrderState): Proof => {
  const drive = state.drives.at(-1)
  const closingLight = state.closing.telltale
  if (drive && (drive.lightAtEnd !== 'off' || drive.lampCheckAfter !== 'lights-and-goes-out'))
    return { verdict: 'not-fixed', why: 'the warning light did not stay off on the proof drive' }
  if (closingLight?.behavior && closingLight.behavior !== 'off' && !drive)
    return { verdict: 'not-fixed', why: 'the warning light is still on at the closing check' }
  if (state.relearn?.result === 'refused')
    return { verdict: 'not-fixed', why: 'the vehicle did not accept its sensors' }
  const minutes = state.drives.reduce((sum, { minutes }) => sum + minutes, 0)
  if (minutes >= proofDriveMinutes) return { verdict: 'proven', minutes }
  if (!state.plan && authorizedBundles(state).length === 0) return { verdict: 'nothing-to-prove' }
  if (minutes > 0)
    return {
      verdict: 'not-yet-proven',
      why: `driven ${minutes} of the ${proofDriveMinutes} minutes that a warning may take`,
    }
  return {
    verdict: 'not-yet-proven',
    why: `not driven yet; a warning may take ${proofDriveMinutes} minutes to come`,
  }
}

/** Why the report may not be sealed; empty when it may. */
export const sealGate = (state: OrderState): GateReason[] => [
  ...roadGate(state),
  ...(state.diagnosis && !state.diagnosis.outdated && state.diagnosis.confirmed
    ? []
    : [reason('findings-unconfirmed', null, 'The findings are not confirmed by a technician.')]),
  ...openSteps(state).map((step) => reason('step-open', step.wheel, `Still open: ${step.does}.`)),
  ...(Object.values(state.work).some((work) => work.broken && !work.fitted)
    ? [
        reason(
          'sensor-broken',
          null,
          'A working sensor was broken in our hands and is not replaced; the vehicle stays.',
        ),
      ]
    : []),
  ...state.holds.filter((hold) => hold.gate === 'seal').map((hold) => reason(hold.code, null, hold.words)),
]

const reason = (code: string, wheel: WheelPosition | null, words: string): GateReason => ({
  code,
  wheel,
  words,
})

/** The label's figure that governs a wheel, in psi; `null` where the sheet has none. */
export const placardPsi = (state: OrderState, wheel: WheelPosition): number | null =>
  state.sheet?.sheet.placard[axleOf(wheel)]?.psi ?? null
