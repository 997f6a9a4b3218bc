import type { FindingCode } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { Pressure, Torque } from '@bayledger/reckoning/quantity'
import type { PartRefusal } from '@bayledger/reckoning/sensor/part-match'
import type { SafetyFigure } from '@bayledger/reckoning/sheet'
import type { StepNamed } from '@bayledger/reckoning/step'
import type { RepairDoubt } from '@bayledger/reckoning/tire/puncture-verdict'
import type { BalanceDoubt } from '@bayledger/reckoning/wheel/balance-left'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { Author } from '../entry.ts'
import type { WorkGate } from '../questions/finding-holds.ts'
import type { GateReason, Parked } from '../questions/gate-reason.ts'
import type { BundleNamed } from '../questions/named.ts'
import type { OdometerDoubt } from '../questions/odometer.ts'
import type { TargetRefusal } from '../questions/pressure-target.ts'
import type { RepairUnjudged } from '../questions/puncture.ts'
import type { RotationRefused } from '../questions/rotating-tires.ts'
import type { NoSoundSpare } from '../questions/sound-spare.ts'
import type { WorkBegan } from '../questions/work-began.ts'
import type { Kind, PayloadOf } from '../registry.ts'
import type { Role } from '../role.ts'

type NoValues = Readonly<Record<string, never>>
type OfWheel = { readonly wheel: WheelPosition }
type OfStep = { readonly step: StepNamed }
type OfBundle = { readonly bundle: BundleNamed }
type OfGate = { readonly reason: GateReason }

/** The values of each refusal. `why` distinguishes the cases of one code. */
export type RefusalValues = {
  readonly ENTRY_ID_REUSED: NoValues
  readonly ENTRY_RESTS_ON_REFUSED: { readonly entryId: string }
  readonly ENTRY_RESTS_ON_UNKNOWN: { readonly entryId: string }
  readonly ENTRY_KIND_NOT_ALLOWED:
    | { readonly why: 'author'; readonly kind: Kind; readonly author: Author['kind'] }
    | {
        readonly why: 'sealed-by-the-server' | 'link-is-the-customers'
        readonly kind: Kind
      }
    | { readonly why: 'written-at-the-desk'; readonly kind: Kind }
  /** Who may write it. */
  readonly ROLE_NOT_ALLOWED: { readonly roles: readonly Role[] }
  readonly REFUND_NOT_ALLOWED: { readonly roles: readonly Role[] }
  readonly REFUND_UNCLEAR: NoValues
  /** What was paid by this method and not yet given back. */
  readonly REFUND_OVER_PAID: {
    readonly method: PayloadOf<'payment.noted'>['method']
    readonly leftCents: number
  }
  readonly ORDER_NOT_OPENED: NoValues
  readonly ORDER_ALREADY_OPENED: NoValues
  readonly ORDER_ENDED: NoValues
  readonly ORDER_SEALED: NoValues
  readonly STEP_NOT_PLANNED: { readonly stepKey: string }
  readonly STEP_OF_OTHER_KIND: OfStep & { readonly why: 'other-kind' | 'other-moment' }
  readonly STEP_ALREADY_CLOSED: OfStep
  readonly STEP_OUT_OF_ORDER:
    | { readonly why: 'forerunner'; readonly first: StepNamed | null }
    | { readonly why: 'no-sheet' }
  readonly STEP_NOT_AUTHORIZED: OfStep
  readonly STEP_ON_OTHER_WHEEL:
    | { readonly why: 'other-wheel'; readonly wheel: WheelPosition; readonly found: WheelPosition | null }
    /** A rotation brings the wheel with this mark; the mark is the place that the wheel came from. */
    | { readonly why: 'other-mark'; readonly wheel: WheelPosition; readonly found: WheelPosition | null }
  readonly STEP_VALUE_MISSING: OfStep
  readonly SHEET_NOT_ON_FILE: NoValues
  readonly STEP_NOT_SET_ASIDE: OfStep
  /** Nobody has entered the figure on the sheet yet. */
  readonly FIGURE_MISSING: { readonly figure: SafetyFigure }
  readonly FIGURE_UNVERIFIED: { readonly figure: SafetyFigure }
  readonly FIGURE_CONFIRMED_BY_WRITER: { readonly figure: SafetyFigure }
  readonly ARRIVAL_INCOMPLETE: OfGate & { readonly before: 'findings' | 'wheel-removal' }
  readonly AUTHORITY_MISSING: { readonly to: 'look' | 'drive' }
  readonly READING_IMPOSSIBLE: OfWheel & {
    readonly found: Pressure
    readonly lowestPsi: number
    readonly highestPsi: number
  }
  readonly GAUGE_UNKNOWN: { readonly gauge: string }
  readonly DIAGNOSIS_DIFFERS: NoValues
  readonly DIAGNOSIS_NOT_CURRENT: NoValues
  /** `finding` as it was sent, which may not be a known code. `stops`: only findings that stop the vehicle count. */
  readonly STOP_NOT_FOUND: { readonly finding: string; readonly stops: boolean }
  readonly ESTIMATE_REVISION_STALE: { readonly to: 'issue' | 'show' | 'answer'; readonly newest: number }
  readonly ESTIMATE_DIGEST_DIFFERS: { readonly to: 'issue' | 'answer' }
  readonly ESTIMATE_TOTALS_DIFFER: NoValues
  readonly DISCOUNT_OVER_LIMIT: OfBundle & { readonly limitPercentThousandths: number }
  readonly ESTIMATE_COVER_UNCLEAR: OfBundle & {
    readonly why: 'differs' | 'open' | 'price' | 'reason' | 'role'
  }
  readonly ESTIMATE_FINDINGS_UNCONFIRMED: NoValues
  readonly ESTIMATE_SENSOR_FORBIDDEN: NoValues
  readonly ESTIMATE_SENSOR_SILENCED: { readonly wheels: readonly WheelPosition[] }
  readonly ESTIMATE_BUNDLES_UNCLEAR: NoValues
  readonly ESTIMATE_SAFETY_DROPPED: OfBundle
  readonly BUNDLE_UNKNOWN: { readonly bundleKey: string }
  /** A refusal that was kept before reasons were named has no `why`. */
  readonly BUNDLE_ALREADY_DECIDED: OfBundle & {
    readonly why?: 'authorized' | 'declined' | 'agreed-before'
  }
  /** A Yes is not taken back once this was done for it. */
  readonly BUNDLE_WORK_BEGAN: OfBundle & WorkBegan
  readonly BUNDLE_ALTERNATIVES_BOTH: OfBundle
  readonly CAUTION_NOT_SHOWN: OfBundle
  readonly MONEY_MISSING: NoValues
  readonly SHOWN_MISSING: NoValues
  readonly CONSENT_NOT_WRITERS: NoValues
  readonly CHECK_UNKNOWN: { readonly field: string }
  readonly TROUBLE_WITHOUT_WHEEL: NoValues
  /** Something is not right at this wheel, and its work waits until that is put right. */
  readonly WHEEL_PARKED: OfWheel & Parked
  readonly PUNCTURE_IMPOSSIBLE: OfWheel & { readonly millimeters: number; readonly mostMillimeters: number }
  /**
   * `no-damage`: a hole beside damage without a puncture. `no-hole`: a puncture beside a list without a hole. `alone`: the
   * first hole has a distance to others. `touching`: holes that run into one another, with repair units that lie apart.
   */
  readonly PUNCTURE_CONTRADICTED: OfWheel & {
    readonly why: 'no-damage' | 'no-hole' | 'alone' | 'touching'
  }
  /** What was typed as the size or the date code of a tire, and is neither. */
  readonly TIRE_SIZE_UNREAD: OfWheel & { readonly found: string }
  readonly TIRE_DATE_UNREAD: OfWheel & { readonly found: string }
  readonly REPAIR_NOT_JUDGED: OfWheel & { readonly because: readonly RepairUnjudged[] }
  readonly PUNCTURE_NOT_REPAIRABLE: OfWheel & { readonly because: readonly RepairDoubt[] }
  readonly SPARE_NOT_SOUND: { readonly why: NoSoundSpare }
  readonly WHEEL_NOT_OFF: OfWheel
  readonly WHEEL_ALREADY_OFF: OfWheel
  readonly WHEEL_HELD_BY_FINDING: {
    readonly wheel: WheelPosition | null
    readonly finding: FindingCode
  }
  readonly WHEEL_NOT_TORQUED: OfWheel & { readonly why: 'off' | 'lowering' | 'not-torqued' }
  readonly WHEEL_NOT_SECURED: OfWheel
  readonly WORK_HELD_BY_FINDING: {
    readonly gate: WorkGate
    readonly wheel: WheelPosition | null
    readonly finding: FindingCode
  }
  readonly SENSOR_BROKEN_OPEN: OfWheel
  readonly SENSOR_FREQUENCY_WRONG: { readonly foundMHz: number; readonly wantedMHz: number }
  /** `wheel`: `null` where another vehicle of this shop has the ID. */
  readonly SENSOR_ID_TAKEN: { readonly wheel: WheelPosition | null }
  /** The last four digits of both IDs. */
  readonly SENSOR_ID_DIFFERS: { readonly programmed: string; readonly found: string }
  readonly PART_DOES_NOT_MATCH: { readonly refusals: readonly PartRefusal[] }
  readonly TORQUE_DIFFERS_FROM_SHEET: { readonly sheet: Torque; readonly found: Torque }
  readonly TORQUE_ROUND_INCOMPLETE:
    | { readonly why: 'count'; readonly fastener: Fastener; readonly count: number; readonly found: number }
    | { readonly why: 'clicks'; readonly clicked: number; readonly total: number }
    | { readonly why: 'moved'; readonly fastener: Fastener; readonly total: number }
  readonly WRENCH_OVERDUE:
    | { readonly why: 'day'; readonly wrench: string; readonly dueOn: string }
    | { readonly why: 'cycles'; readonly wrench: string; readonly cycles: number; readonly dueAt: number }
  readonly WRENCH_OUT_OF_RANGE: {
    readonly wrench: string
    readonly found: Torque
    readonly low: number
    readonly high: number
    readonly unit: Torque['unit']
  }
  readonly WRENCH_UNKNOWN: { readonly wrench: string }
  readonly SECOND_PERSON_IS_DOER: { readonly to: 'check-torque' | 'agree' }
  readonly SECOND_PERSON_UNKNOWN: NoValues
  /** Who may be the second person. */
  readonly SECOND_PERSON_ROLE_NOT_ALLOWED: { readonly roles: readonly Role[] }
  readonly SECOND_PERSON_UNPROVEN: NoValues
  /** How long a sole worker waits between the last round and their own check. */
  readonly SOLE_WORKER_TOO_SOON: { readonly minutes: number }
  readonly PRESSURE_TARGET_DIFFERS: { readonly why: 'changed' } | TargetRefusal
  readonly PRESSURE_OVER_SIDEWALL: OfWheel & { readonly found: Pressure; readonly maximumPsi: number }
  readonly PRESSURE_NOT_ON_TARGET: {
    readonly side: 'under' | 'over'
    readonly found: Pressure
    readonly targetPsi: number
    readonly overPsi: number
  }
  readonly ROAD_GATE_CLOSED: OfGate
  readonly BALANCE_UNCLEAR: BalanceDoubt | { readonly why: 'in-words' }
  readonly ROTATION_NOT_ALLOWED: ({ readonly why: 'tires' } & RotationRefused) | { readonly why: 'in-words' }
  readonly ODOMETER_BACKWARDS: NoValues
  /** Both in whole minutes or as typed. */
  readonly DRIVE_LONGER_THAN_ORDER: { readonly minutes: number; readonly orderMinutes: number }
  /** A refusal that was kept before earlier visits were looked at has no `daysAgo`. */
  readonly ODOMETER_IMPLAUSIBLE: Omit<OdometerDoubt, 'daysAgo'> & Partial<Pick<OdometerDoubt, 'daysAgo'>>
  readonly COMEBACK_OF_ANOTHER_VEHICLE: NoValues
  /** `cause-missing`: an estimate waits for it. */
  readonly COMEBACK_NOT_JUDGED: {
    readonly why: 'no-comeback' | 'findings-unconfirmed' | 'words-missing' | 'cause-missing'
  }
  readonly VEHICLE_OF_ANOTHER_CUSTOMER: NoValues
  readonly ASSIGNEE_UNKNOWN: NoValues
  readonly PAYMENT_UNKNOWN: NoValues
  readonly PAYMENT_CHANGES_NOTHING: NoValues
  readonly PHOTO_TOO_LARGE: { readonly bytes: number }
  readonly PHOTO_UNKNOWN: NoValues
  readonly REPORT_HEAD_MOVED: NoValues
  readonly SEAL_GATE_CLOSED: OfGate
  readonly REPORT_NOT_SEALED: NoValues
  readonly REPORT_SUPERSEDES_OTHER: NoValues
  readonly HAND_BACK_GATE_CLOSED: OfGate
  readonly RELEASE_NOT_AGREED: NoValues
  readonly HOLD_UNKNOWN: NoValues
  readonly STRIKE_TARGET_UNKNOWN: NoValues
  readonly STRIKE_NOT_ALLOWED: NoValues
  readonly STRIKE_ALREADY_STRUCK: NoValues
  readonly STRIKE_NOT_OWN: NoValues
  readonly STRIKE_NEEDS_SECOND_PERSON: { readonly to: 'undo' | 'withdraw' }
  readonly PLAN_NOT_BY_SYSTEM: NoValues
  /** The paths of the draft's invalid fields. */
  readonly ENTRY_INVALID: { readonly fields: readonly string[] }
  readonly SIDE_MISSING: NoValues
  readonly WRITER_NOT_ACTIVE: NoValues
  readonly TABLET_PUT_OUT: NoValues
  readonly ORDER_PARTS_UNKNOWN: { readonly part: 'customer' | 'vehicle' | 'location' }
}

type Fastener = 'nut' | 'bolt'
