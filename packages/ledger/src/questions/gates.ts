import type { FindingCode } from '@bayledger/reckoning/diagnosis/diagnosis'
import { placardOf } from '@bayledger/reckoning/sheet'
import { namedStep, type Step } from '@bayledger/reckoning/step'
import { axleOf, inReadingOrder, roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { Author } from '../entry.ts'
import type { OrderState, TorqueSeal, WheelWork } from '../state.ts'
import { unansweredBundles } from './answers.ts'
import { openConflicts } from './conflicts.ts'
import { estimateIsMissing } from './estimate-is-missing.ts'
import { afterTheRoad, isRefusedFinding, openStops } from './finding-holds.ts'
import { type GateReason, reason } from './gate-reason.ts'
import { namedBundle } from './named.ts'
import { isPassed, isSetAside } from './passed-steps.ts'
import { isSpareOn, spareWheel } from './spare-on.ts'
import { leavesBy, type OpenTrouble, parkedBy, troublesOnTheRoad } from './troubles.ts'

export { authorizedBundles } from './answers.ts'
export { proofOf } from './proof.ts'

/** What is still to be checked before a wheel may come off; "could not be checked" with a reason counts as done. */
export const missingOnArrival = (state: OrderState): GateReason[] => {
  const sheet = state.sheet?.sheet
  if (!sheet) return [reason('sheet', null)]
  const gauged: readonly WheelPosition[] = sheet.spare === 'none' ? roadPositions : [...roadPositions, 'SP']
  const heard: readonly WheelPosition[] =
    sheet.system !== 'direct' ? [] : sheet.spareMonitored ? [...roadPositions, 'SP'] : roadPositions
  return [
    ...(state.surroundings ? [] : [reason('surroundings', null)]),
    ...(state.arrival.telltale?.behavior && state.arrival.telltale.lampCheck
      ? []
      : [reason('warning-light', null)]),
    ...gauged
      .filter((wheel) => !state.arrival.wheels[wheel]?.gauge && !excused(state, wheel, 'gauge'))
      .map((wheel) => reason('gauge', wheel)),
    ...heard
      .filter((wheel) => !sensorSettled(state, wheel) && !excused(state, wheel, 'answer'))
      .map((wheel) => reason('sensor', wheel)),
    ...gauged.filter((wheel) => !tireLookedAt(state, wheel)).map((wheel) => reason('tire', wheel)),
    ...(sheet.system !== 'direct' || state.arrival.module ? [] : [reason('control-module', null)]),
  ]
}

/** What is looked at on every wheel before anything is touched; a spare has no nuts of its own. */
export const lookedAt = ['stem', 'treadDepth32nds', 'tireDamage', 'fastenerDamage'] as const

const tireLookedAt = (state: OrderState, wheel: WheelPosition): boolean =>
  lookedAt
    .filter((part) => part !== 'fastenerDamage' || wheel !== 'SP')
    .every((part) => (state.arrival.tires[wheel]?.[part] ?? null) !== null || excused(state, wheel, part))

const sensorSettled = (state: OrderState, wheel: WheelPosition): boolean => {
  const sensor = state.arrival.wheels[wheel]?.sensor?.reading
  return sensor?.answer === 'answered' || (sensor?.answer === 'silent' && sensor.tries >= 2)
}

const excused = (state: OrderState, wheel: WheelPosition, field: string): boolean =>
  (state.arrival.wheels[wheel]?.notPossible ?? []).some((entry) => entry.field === field)

/** Wheels that came off in this order, in reading order. */
export const wheelsThatCameOff = (state: OrderState): WheelPosition[] =>
  inReadingOrder(
    (Object.keys(state.work) as WheelPosition[]).filter((wheel) => cameOff(state.work[wheel], wheel)),
  )

/** Withdrawing the entry that took a wheel off does not put the wheel on: later work shows that it was off. */
const cameOff = (work: WheelWork | undefined, wheel: WheelPosition | null): boolean =>
  work !== undefined &&
  Boolean(work.removed || work.mounted || (wheel !== 'SP' && (work.fitted || work.inside)))

export type WheelStatus = 'on' | 'off' | 'untorqued' | 'unchecked' | 'secured'

/** Whether a wheel is off, on without torque, torqued without a second check, or secured; `on` if it never came off. */
export const wheelStatus = (state: OrderState, wheel: WheelPosition): WheelStatus => {
  const work = state.work[wheel]
  if (!work || !cameOff(work, wheel)) return 'on'
  if (!work.mounted) return 'off'
  if (!work.rounds.full || !work.rounds.again) return 'untorqued'
  return work.checked ? 'secured' : 'unchecked'
}

/** Every torque round of a wheel since it was fitted. */
export const sealsOf = (work: WheelWork | undefined): TorqueSeal[] => [
  ...Object.values(work?.rounds ?? {}),
  ...(work?.overtaken ?? []).filter(({ round }) => round !== 'check'),
]

/** The people who sealed any of them. None of them may be the wheel's second person, unless they work here alone. */
export const torquedBy = (work: WheelWork | undefined): Author[] =>
  sealsOf(work).map((seal) => seal.written.by)

/** Wheels that are off, untorqued or unchecked: the vehicle may not move, nor may its order end. */
export const insecureWheels = (state: OrderState): WheelPosition[] =>
  wheelsThatCameOff(state).filter((wheel) => wheelStatus(state, wheel) !== 'secured')

/** Wheels whose working sensor was broken in our hands and was not replaced since. */
export const brokenSensors = (state: OrderState): WheelPosition[] =>
  inReadingOrder(Object.keys(state.work) as WheelPosition[]).filter((wheel) => {
    const { broken, fitted } = state.work[wheel] ?? {}
    return broken && !(fitted && fitted.written.seq > broken.written.seq)
  })

const wheelReasons = (state: OrderState): GateReason[] =>
  wheelsThatCameOff(state).flatMap((wheel): GateReason[] => {
    const status = wheelStatus(state, wheel)
    if (status === 'off') return [reason('wheel-off', wheel)]
    if (status === 'untorqued') return [reason('wheel-untorqued', wheel)]
    if (status === 'unchecked') return [reason('wheel-unchecked', wheel)]
    return []
  })

const parkedReason = ({ wheel, what, waitsFor }: OpenTrouble): GateReason =>
  reason('wheel-parked', wheel, { what, waitsFor })

const offTheRoad =
  (state: OrderState) =>
  (code: FindingCode): GateReason => {
    const finding = state.diagnosis?.diagnosis.findings.find((one) => one.code === code)
    const isRefused = finding !== undefined && isRefusedFinding(state, finding)
    return reason('stop-open', null, { finding: code, keeps: isRefused ? 'refused' : 'off-the-road' })
  }

const held = (state: OrderState, gate: 'road' | 'hand-back'): GateReason[] =>
  state.holds.filter((hold) => hold.gate === gate).map(heldReason)

/** Why the vehicle may not move on the road; empty when it may. No refusal opens it. */
export const roadGate = (state: OrderState): GateReason[] => [
  ...wheelReasons(state),
  ...troublesOnTheRoad(state).map(parkedReason),
  ...openStops(state, 'road').map(offTheRoad(state)),
  ...held(state, 'road'),
]

/** The refusal says that the vehicle leaves on its spare, and that is not on yet. */
const spareMissing = (state: OrderState): GateReason[] => {
  const wheel = spareWheel(state)
  return wheel === null || isSpareOn(state, wheel) ? [] : [reason('spare-not-on', wheel)]
}

/** What keeps the vehicle here. What the customer refused on record does not; a towed vehicle may lack a wheel. */
const leavingGate = (state: OrderState): GateReason[] => {
  const troubles = troublesOnTheRoad(state)
  const refused = (state.diagnosis?.diagnosis.findings ?? [])
    .filter((finding) => isRefusedFinding(state, finding))
    .map(({ code }) => code)
  return [
    ...wheelReasons(state).filter(
      ({ wheel }) =>
        !troubles.some((trouble) => trouble.wheel === wheel && leavesBy(state, trouble) === 'towed'),
    ),
    ...spareMissing(state),
    ...troubles.filter((trouble) => leavesBy(state, trouble) === null).map(parkedReason),
    ...openStops(state, 'road')
      .filter((code) => !refused.includes(code))
      .map(offTheRoad(state)),
    ...held(state, 'road'),
  ]
}

/** Why the keys may not be given back; empty when they may. */
export const handBackGate = (state: OrderState): GateReason[] => {
  const onTheRoad = openStops(state, 'road')
  return [
    ...leavingGate(state),
    ...(state.diagnosis?.diagnosis.findings ?? [])
      .filter((finding) => openStops(state, 'hand-back').includes(finding.code))
      .filter((finding) => !onTheRoad.includes(finding.code) && !isRefusedFinding(state, finding))
      .map(({ code }) => reason('stop-open', null, { finding: code, keeps: 'here' })),
    ...held(state, 'hand-back'),
  ]
}

/** Steps of the plan that are neither closed nor set aside, in the plan's order. */
export const openSteps = (state: OrderState) =>
  (state.plan?.plan.steps ?? []).filter((step) => !state.closed[step.stepKey] && !isSetAside(state, step))

/** Open steps whose earlier steps are all done: what the bay may do next. */
export const readySteps = (state: OrderState) =>
  openSteps(state).filter((step) => step.waitsFor.every((key) => isPassed(state, key)))

/** Why the report may not be sealed; empty when it may. */
export const sealGate = (state: OrderState): GateReason[] => [
  ...leavingGate(state),
  ...(state.diagnosis && !state.diagnosis.outdated && state.diagnosis.confirmed
    ? []
    : [reason('findings-unconfirmed', null)]),
  ...(estimateIsMissing(state) ? [reason('estimate-missing', null)] : []),
  ...unansweredBundles(state).map((bundle) =>
    reason('estimate-unanswered', null, {
      bundle: namedBundle(bundle),
    }),
  ),
  ...stepsStillOwed(state).map((step) => reason('step-open', step.wheel, { step: namedStep(step) })),
  ...brokenSensors(state).map((wheel) => reason('sensor-broken', wheel)),
  ...openConflicts(state).map((conflict) =>
    reason('recorded-twice', conflict.wheel, {
      fact: conflict.fact,
      phase: conflict.phase,
    }),
  ),
  ...state.holds.filter((hold) => hold.gate === 'seal').map(heldReason),
]

/**
 * Open steps without those that stay undone: work on a wheel that the customer refused to have put right and, where the
 * vehicle leaves on its spare, every drive of ours and whatever waits for what stays undone.
 */
const stepsStillOwed = (state: OrderState): Step[] => {
  const onSpare = spareWheel(state) !== null
  const undone = new Set(onSpare ? afterTheRoad(state) : [])
  return openSteps(state).filter((step) => {
    const trouble = parkedBy(state, step)
    const staysUndone =
      undone.has(step.stepKey) ||
      (trouble !== null && leavesBy(state, trouble) !== null) ||
      (onSpare && step.waitsFor.some((key) => undone.has(key)))
    if (staysUndone) undone.add(step.stepKey)
    return !staysUndone
  })
}

/** A hold's code and values; a hold that version 1 wrote in words keeps those words. */
export const heldReason = (hold: OrderState['holds'][number]): GateReason => {
  if ('words' in hold) return reason('wrench-doubtful', null, { asWritten: hold.words })
  const { code, wheel, values } = hold
  return { code, wheel, values } as GateReason
}

/** The label's figure that governs a wheel, in psi; `null` where the sheet has none. */
export const placardPsi = (state: OrderState, wheel: WheelPosition): number | null =>
  placardOf(state.sheet?.sheet)?.[axleOf(wheel)]?.psi ?? null
