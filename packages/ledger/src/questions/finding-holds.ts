import type { Finding, FindingCode } from '@bayledger/reckoning/diagnosis/diagnosis'
import { type Settlement, settledBy } from '@bayledger/reckoning/diagnosis/settlement'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'
import { authorizedBundles } from './answers.ts'
import { isPutRight } from './troubles.ts'

/** The finding that forbids this work on a wheel (`null`: on the vehicle), unless the customer refused it or work cured it. */
export const holdingFinding = (state: OrderState, gate: WorkGate, wheel: WheelPosition | null) =>
  (state.diagnosis?.diagnosis.findings ?? []).find(
    (finding) =>
      finding.holds.includes(gate) &&
      (wheel === null || finding.wheels.length === 0 || finding.wheels.includes(wheel)) &&
      !isSettled(state, finding, gate, wheel),
  )

export type WorkGate = 'wheel-removal' | 'inflation' | 'bead-break' | 'pressure-setting' | 'relearn'

/** For a relearn, setting the pressures or fitting an offered sensor settles a finding on wheels; else its own settlement does. */
const isSettled = (
  state: OrderState,
  finding: Finding,
  gate: WorkGate,
  wheel: WheelPosition | null,
): boolean => {
  const { wheels, offers } = finding
  if (gate === 'relearn' && wheels.length > 0)
    return wheels.every((position) => {
      const work = state.work[position]
      return work?.pressure || (offers.includes('sensor') && work?.fitted)
    })
  const settlement = settledBy[finding.code]
  return settlement !== undefined && settlements[settlement](state, finding, wheel)
}

type Settles = (state: OrderState, finding: Finding, wheel: WheelPosition | null) => boolean

const settlements: Readonly<Record<Settlement, Settles>> = {
  'inside-sound': (state, _finding, wheel) => isSoundInside(state, wheel),
  told: (state, { code }) => state.stopsTold[code] !== undefined,
  'label-confirmed': (state) => state.figures.placard !== undefined,
}

const isSoundInside = (state: OrderState, wheel: WheelPosition | null): boolean =>
  wheel !== null && state.work[wheel]?.inside?.inside === 'sound'

/** Seeing a tire sound inside opens the road and the hand-back; telling the customer of a danger opens neither. */
const isSoundEverywhere = (state: OrderState, { code, wheels }: Finding): boolean =>
  settledBy[code] === 'inside-sound' &&
  wheels.length > 0 &&
  wheels.every((wheel) => isSoundInside(state, wheel))

/** Whether the customer refused a finding on record, for every wheel that it concerns now. */
export const isRefusedFinding = ({ refusals }: OrderState, { code, wheels }: Finding): boolean =>
  refusals[code] !== undefined && wheels.every((wheel) => refusals[code]?.wheels.includes(wheel))

/**
 * Findings that hold a gate and were not cured by authorized and finished work. A refusal on record lets the customer
 * take the vehicle; it never lets us drive it.
 */
export const openStops = (state: OrderState, gate: 'road' | 'hand-back'): FindingCode[] =>
  (state.diagnosis?.diagnosis.findings ?? [])
    .filter((finding) => finding.holds.includes(gate))
    .filter((finding) => !isSettledByWork(state, finding))
    .map((finding) => finding.code)

/** Cured by authorized and finished work, put right, or looked at and found sound; a refusal settles nothing. */
export const isSettledByWork = (state: OrderState, finding: Finding): boolean =>
  cured(state, finding.code) || isPutRight(state, finding) || isSoundEverywhere(state, finding)

const cured = (state: OrderState, code: string): boolean => {
  const curing = authorizedBundles(state).filter((bundle) => bundle.findings.includes(code))
  const steps = (state.plan?.plan.steps ?? []).filter((step) =>
    curing.some((bundle) => bundle.bundleKey === step.bundleKey),
  )
  const onTheRoad = afterTheRoad(state)
  const beforeTheRoad = steps.filter(({ stepKey }) => !onTheRoad.has(stepKey))
  return beforeTheRoad.length > 0 && beforeTheRoad.every((step) => state.closed[step.stepKey])
}

/** The steps that are done on the road or after it: they cannot open it. */
export const afterTheRoad = ({ plan }: OrderState): ReadonlySet<string> => {
  const after = new Set<string>()
  for (const { stepKey, closedBy, waitsFor } of plan?.plan.steps ?? [])
    if (closedBy === 'drive.done' || closedBy === 'relearn.done' || waitsFor.some((key) => after.has(key)))
      after.add(stepKey)
  return after
}
