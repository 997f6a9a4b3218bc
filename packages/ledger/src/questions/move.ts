import type { FindingCode } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { StepNamed } from '@bayledger/reckoning/step'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { DriveDoubt } from '../hold.ts'
import type { PayloadOf } from '../registry.ts'
import type { Conflict, Written } from '../state.ts'
import type { GateReason, Parked } from './gate-reason.ts'
import type { Care } from './handle-with-care.ts'

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

type NoValues = Readonly<Record<string, never>>

/** What each move is made of, beside its wheel. */
export type MoveValues = {
  readonly finished: NoValues
  /** `null`: the wheel that came off; otherwise the step of the plan. */
  readonly 'torque-check': { readonly step: StepNamed | null }
  readonly 'wheel-off': NoValues
  readonly 'wheel-untorqued': NoValues
  /** The desk tells the customer, and decides with them. */
  readonly 'wheel-parked': Parked
  /** Said beside whatever the order waits for: nobody touches that tire without knowing it. */
  readonly 'handle-with-care': Care
  readonly 'stop-untold': { readonly finding: FindingCode; readonly wheels: readonly WheelPosition[] }
  readonly 'sensor-broken': NoValues
  readonly wait: { readonly reason: PayloadOf<'wait.set'>['reason'] }
  readonly complaint: NoValues
  readonly sheet: NoValues
  readonly authority: NoValues
  readonly 'arrival-check': { readonly left: number; readonly first: GateReason }
  readonly 'recorded-twice': Pick<Conflict, 'fact' | 'phase'>
  /** `changed`: there are findings, and readings have changed since. */
  readonly 'findings-uncomputed': { readonly changed: boolean }
  readonly 'findings-unconfirmed': NoValues
  readonly 'comeback-cause-missing': NoValues
  readonly 'estimate-missing': NoValues
  readonly 'estimate-unshown': NoValues
  readonly 'estimate-unanswered': NoValues
  /** Its message came to nothing. Known beside the ledger, from the outbox. */
  readonly 'estimate-undelivered': NoValues
  readonly 'part-promised': { readonly partCode: string }
  readonly 'step-open': { readonly step: StepNamed }
  readonly 'step-blocked': NoValues
  /** Minutes driven so far with the light off, and those that the drive takes. */
  readonly 'drive-open': { readonly minutes: number; readonly needed: number }
  /** The clock contradicts the minutes of a drive. */
  readonly 'drive-doubtful': DriveDoubt
  readonly 'seal-gate': { readonly reason: GateReason }
  /** `sealed`: a report went without it. */
  readonly 'payment-open': { readonly sealed: boolean }
  readonly 'report-unsealed': NoValues
  readonly keys: NoValues
  /** It will be ready so many minutes after the promise. Computed beside the ledger, from what such steps took before. */
  readonly 'promise-slips': { readonly minutes: number }
}
export type MoveCode = keyof MoveValues

type MoveOf<Code extends MoveCode> = {
  readonly mover: Mover
  readonly code: Code
  readonly wheel: WheelPosition | null
  readonly values: MoveValues[Code]
  readonly since: string | null
  readonly until: string | null
}

/** One thing an order waits for. `since` is when the wait began; `until` only where somebody named a time. */
export type Move = { readonly [Code in MoveCode]: MoveOf<Code> }[MoveCode]

export const move = <Code extends MoveCode>(
  mover: Mover,
  code: Code,
  values: MoveValues[Code],
  since: Written | null | undefined,
  wheel: WheelPosition | null = null,
): MoveOf<Code> => ({ mover, code, wheel, values, since: since?.writtenAt ?? null, until: null })
