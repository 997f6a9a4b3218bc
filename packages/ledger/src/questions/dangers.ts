import type { Finding, FindingCode } from '@bayledger/reckoning/diagnosis/diagnosis'
import { roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { BundleDecision, IssuedBundle, OrderState } from '../state.ts'
import { answerTo, newestBundles } from './answers.ts'
import { psi } from './evidence-of.ts'
import { isSettledByWork } from './finding-holds.ts'
import { placardPsi, wheelStatus } from './gates.ts'
import { lowByPsi } from './low-wheels.ts'
import { isSpareOn } from './spare-on.ts'

/** A finding that stops the vehicle, what was offered against it, and whether it is settled. */
export type Danger = {
  readonly finding: Finding
  /** Neither repaired nor looked at and found sound. A refusal on record does not settle it. */
  readonly isOpen: boolean
  /** The spare stands in the place of the wheel that it concerns. */
  readonly isOffTheRoad: boolean
  readonly remedies: readonly { readonly bundle: IssuedBundle; readonly decision: BundleDecision | null }[]
}

/** Every stop of the newest findings, in the order of the rules. */
export const dangersOf = (state: OrderState): readonly Danger[] =>
  (state.diagnosis?.diagnosis.findings ?? [])
    .filter(({ kind }) => kind === 'stop')
    .map((finding) => ({
      finding,
      isOpen: !isSettledByWork(state, finding),
      isOffTheRoad:
        finding.wheels.length > 0 &&
        finding.wheels.every((wheel) => isSpareOn(state, wheel) && wheelStatus(state, wheel) === 'secured'),
      remedies: newestBundles(state)
        .filter(({ findings }) => findings.includes(finding.code))
        .map((bundle) => ({ bundle, decision: answerTo(state, bundle) })),
    }))

/**
 * Stops of which the customer is still to be told: nobody told them, or of other wheels only, and neither a refusal on
 * record nor work has settled it meanwhile.
 */
export const untoldStops = (state: OrderState): readonly Finding[] =>
  (state.diagnosis?.diagnosis.findings ?? []).filter((finding) => {
    const told = state.stopsTold[finding.code]
    const isTold = told !== undefined && finding.wheels.every((wheel) => told.wheels.includes(wheel))
    return (
      finding.kind === 'stop' && !isTold && !state.refusals[finding.code] && !isSettledByWork(state, finding)
    )
  })

/** Whether a danger keeps the vehicle off the road or here, and neither work has settled it nor the spare removed it. */
export const isUnsafeToTake = (danger: Danger): boolean => !danger.isOffTheRoad && isNotRepaired(danger)

/** Whether a danger that keeps a vehicle off the road or here was left. */
export const isNotRepaired = ({ isOpen, finding }: Danger): boolean =>
  isOpen && finding.holds.some((hold) => hold === 'road' || hold === 'hand-back')

/** Whether the spare can take the place of the one wheel that keeps the vehicle from being driven. */
export type SpareHelp =
  | { readonly spare: 'full-size'; readonly psi: number }
  | { readonly spare: 'temporary'; readonly psi: number }
  | { readonly spare: 'low'; readonly psi: number; readonly label: number }
  | { readonly spare: 'damaged' | 'not-checked' | 'none' | 'no-help' }

/** Dangers that a sound wheel in the same place takes away. */
const ofTheTire: ReadonlySet<FindingCode> = new Set<FindingCode>([
  'tire-unsafe',
  'run-low-damage-possible',
  'puncture-not-repairable',
  'stem-leaking',
])

export const spareHelp = (state: OrderState): SpareHelp => {
  const open = dangersOf(state).filter(isUnsafeToTake)
  const wheels = new Set(open.flatMap(({ finding }) => finding.wheels))
  if (!open.every(({ finding }) => ofTheTire.has(finding.code)) || !isOneRoadWheel([...wheels]))
    return { spare: 'no-help' }
  const kind = state.sheet?.sheet.spare
  if (kind === 'none') return { spare: 'none' }
  const gauge = state.arrival.wheels.SP?.gauge?.pressure
  const label = placardPsi(state, 'SP')
  const damage = state.arrival.tires.SP?.tireDamage ?? null
  if (kind === undefined || kind === 'unknown' || !gauge || label === null || damage === null)
    return { spare: 'not-checked' }
  const held = psi(gauge)
  if (damage.length > 0) return { spare: 'damaged' }
  return held <= label - lowByPsi ? { spare: 'low', psi: held, label } : { spare: kind, psi: held }
}

const isOneRoadWheel = (wheels: readonly WheelPosition[]): boolean =>
  wheels.length === 1 && roadPositions.some((wheel) => wheel === wheels[0])
