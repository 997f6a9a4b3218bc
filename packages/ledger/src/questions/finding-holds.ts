import type { Finding, FindingCode } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'
import { authorizedBundles } from './answers.ts'

/** The finding that forbids this work on a wheel (`null`: on the vehicle), unless the customer refused or work cured it. */
export const holdingFinding = (state: OrderState, gate: WorkGate, wheel: WheelPosition | null) =>
  (state.diagnosis?.diagnosis.findings ?? []).find(
    (finding) =>
      finding.holds.includes(gate) &&
      (wheel === null || finding.wheels.length === 0 || finding.wheels.includes(wheel)) &&
      !isSettled(state, finding, gate, wheel),
  )

export type WorkGate = 'wheel-removal' | 'inflation' | 'bead-break' | 'pressure-setting' | 'relearn'

/** What settles a finding short of reading anew: pressures set, the tire seen sound inside, the danger told, the label confirmed. */
const isSettled = (
  state: OrderState,
  { code, wheels, offers }: Finding,
  gate: WorkGate,
  wheel: WheelPosition | null,
): boolean => {
  if (gate === 'relearn' && wheels.length > 0)
    return wheels.every((position) => {
      const work = state.work[position]
      return work?.pressure || (offers.includes('sensor') && work?.fitted)
    })
  if (code === 'run-low-damage-possible') return seenSound(state, wheel)
  if (code === 'sealant-inside') return state.stopsTold[code] !== undefined
  return code === 'placard-unverified' && state.figures.placard !== undefined
}

const seenSound = (state: OrderState, wheel: WheelPosition | null): boolean =>
  wheel !== null && state.work[wheel]?.inside?.inside === 'sound'

/** Findings that hold a gate, were not cured by authorized and finished work, and were not refused on record. */
export const openStops = (state: OrderState, gate: 'road' | 'hand-back'): FindingCode[] =>
  (state.diagnosis?.diagnosis.findings ?? [])
    .filter((finding) => finding.holds.includes(gate) && !state.refusals[finding.code])
    .filter(
      (finding) =>
        !cured(state, finding.code) &&
        !(
          finding.code === 'run-low-damage-possible' &&
          finding.wheels.length > 0 &&
          finding.wheels.every((wheel) => seenSound(state, wheel))
        ),
    )
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
