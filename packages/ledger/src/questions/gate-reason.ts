import type { FindingCode } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { StepNamed } from '@bayledger/reckoning/step'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { ClockDoubt, DriveDoubt, LateDoubt, WrenchDoubt } from '../hold.ts'
import type { Conflict } from '../state.ts'
import type { BundleNamed } from './named.ts'
import type { OpenTrouble } from './troubles.ts'

type NoValues = Readonly<Record<string, never>>

/** What is not right, and what the wheel waits for. */
export type Parked = Pick<OpenTrouble, 'what' | 'waitsFor'>

/** What each reason for a shut gate is made of, beside its wheel. */
export type GateValues = {
  readonly sheet: NoValues
  readonly surroundings: NoValues
  readonly 'warning-light': NoValues
  readonly gauge: NoValues
  readonly sensor: NoValues
  readonly tire: NoValues
  readonly 'control-module': NoValues
  readonly 'wheel-off': NoValues
  readonly 'wheel-untorqued': NoValues
  readonly 'wheel-unchecked': NoValues
  readonly 'wheel-parked': Parked
  readonly 'spare-not-on': NoValues
  readonly 'stop-open': {
    readonly finding: FindingCode
    /** `refused`: off the road for good, because the customer refused the repair on record. */
    readonly keeps: 'off-the-road' | 'refused' | 'here'
  }
  readonly 'wrench-doubtful': WrenchDoubt | { readonly asWritten: string }
  readonly 'device-clock-doubtful': ClockDoubt
  readonly 'drive-minutes-doubtful': DriveDoubt
  readonly 'heard-late': LateDoubt
  readonly 'findings-unconfirmed': NoValues
  readonly 'estimate-missing': NoValues
  readonly 'estimate-unanswered': { readonly bundle: BundleNamed }
  readonly 'step-open': { readonly step: StepNamed }
  readonly 'sensor-broken': NoValues
  readonly 'recorded-twice': Pick<Conflict, 'fact' | 'phase'>
}
export type GateCode = keyof GateValues

/** Why a gate is shut: a code, the wheel that it concerns, and the values that its words are made from. */
export type GateReason = {
  readonly [Code in GateCode]: {
    readonly code: Code
    readonly wheel: WheelPosition | null
    readonly values: GateValues[Code]
  }
}[GateCode]

type ValuesFor<Code extends GateCode> = GateValues[Code] extends NoValues
  ? [values?: NoValues]
  : [values: GateValues[Code]]

/** Makes a reason; `values` only if its code has any. */
export const reason = <Code extends GateCode>(
  code: Code,
  wheel: WheelPosition | null,
  ...[values]: ValuesFor<Code>
): GateReason => ({ code, wheel, values: values ?? {} }) as GateReason
