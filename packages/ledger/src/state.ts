import type { CautionReference } from '@bayledger/reckoning/cautions/caution-reference'
import type { Diagnosis, Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { Answer } from '@bayledger/reckoning/estimate'
import type { EventEvidence, Evidence, LightBehavior } from '@bayledger/reckoning/evidence/evidence'
import type { Distance, Pressure } from '@bayledger/reckoning/quantity'
import type { SafetyFigure, SpecificationSheet } from '@bayledger/reckoning/sheet'
import type { PlanInForce } from '@bayledger/reckoning/step'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { Author } from './entry.ts'
import type { Hold } from './hold.ts'
import type { Kind, PayloadOf } from './registry.ts'
import type { TroubleKind } from './subjects/trouble/kinds.ts'
import type { Timed } from './timed.ts'

/** The entry that recorded a fact: enough to show who and when, and to strike it. */
export type Written = {
  readonly entryId: string
  readonly seq: number
  readonly by: Author
  readonly deviceId: string | null
  /** By the device's clock: shown, never trusted. */
  readonly writtenAt: string
  /** By the server's clock; `null` while it has not been sent. */
  readonly receivedAt: string | null
}

/** A fact with the entry that recorded it. */
export type Recorded<T> = T & { readonly written: Written }

/** One line of the ledger as the margin shows it; a struck line stays, with its reason. */
export type Mark = Written & {
  readonly kind: Kind
  readonly receivedAt: string | null
  readonly struck:
    | (Written & { readonly reason: PayloadOf<'entry.struck'>['reason']; readonly words: string | null })
    | null
}

/** What one whole-vehicle check recorded of a wheel; `null` is "not checked", never "fine". */
export type WheelReadings = {
  readonly mounted: 'road' | 'temporary-spare' | null
  /** `asRead`: what the gauge showed, where the pressure was corrected by the gauge's offset. */
  readonly gauge: Recorded<
    NonNullable<PayloadOf<'wheel.checked'>['gauge']> & { readonly asRead?: Pressure }
  > | null
  readonly sensor: Recorded<{ readonly reading: NonNullable<PayloadOf<'wheel.checked'>['sensor']> }> | null
  readonly notPossible: PayloadOf<'wheel.checked'>['notPossible']
}

export type TireRecord = Omit<PayloadOf<'tire.inspected'>, 'when' | 'wheel' | 'stepKey'>

export type VehicleCheck = {
  readonly wheels: Readonly<Partial<Record<WheelPosition, WheelReadings>>>
  readonly tires: Readonly<Partial<Record<WheelPosition, Recorded<TireRecord>>>>
  readonly module: Recorded<PayloadOf<'module.read'>> | null
  readonly telltale: Recorded<{
    readonly lampCheck: 'lights' | 'dark' | null
    readonly behavior: LightBehavior | null
    /** For how long it was watched, by the tablet's clock. */
    readonly timed: Timed
  }> | null
}

export type TorqueSeal = Recorded<Omit<PayloadOf<'studs.torqued'>, 'stepKey' | 'round'>>

/** A sealed round that no longer counts; `check` is the second person's round. */
export type OvertakenRound = TorqueSeal & { readonly round: PayloadOf<'studs.torqued'>['round'] | 'check' }

/** A wheel's state in the work. It keeps the vehicle off the road until the wheel is torqued and checked. */
export type WheelWork = {
  readonly removed: Recorded<{ readonly remark: PayloadOf<'wheel.removed'>['remark'] }> | null
  readonly mounted: Recorded<{ readonly cameFrom: WheelPosition }> | null
  /** The valid rounds since the wheel was last fitted. */
  readonly rounds: Readonly<Partial<Record<PayloadOf<'studs.torqued'>['round'], TorqueSeal>>>
  /** Rounds of this fitting that are no longer valid: a fastener moved, or an earlier round was sealed again. */
  readonly overtaken: readonly OvertakenRound[]
  /** Rounds of earlier fittings: sealed before the wheel came off or went on again. */
  readonly earlierFittings: readonly OvertakenRound[]
  readonly checked: TorqueSeal | null
  readonly part: Recorded<PayloadOf<'part.drawn'>> | null
  readonly programmed: Recorded<PayloadOf<'sensor.programmed'>> | null
  readonly fitted: Recorded<PayloadOf<'sensor.fitted'>> | null
  readonly leak: Recorded<PayloadOf<'leak.checked'>> | null
  /** `asRead`: what the gauge showed, where `asLeft` was corrected by the gauge's offset. */
  readonly pressure: Recorded<PayloadOf<'pressure.set'> & { readonly asRead?: Pressure }> | null
  readonly broken: Recorded<PayloadOf<'sensor.broken'>> | null
  readonly inside: Recorded<TireRecord> | null
  /** The holes that the newest look inside has measured; none, if it saw none. */
  readonly holes: Recorded<{ readonly punctures: NonNullable<TireRecord['punctures']> }> | null
}

export type Confirmation = Recorded<PayloadOf<'diagnosis.confirmed'>['verdict']>

export type IssuedDiagnosis = Recorded<{
  readonly evidence: Evidence
  readonly diagnosis: Diagnosis
  readonly confirmed: Confirmation | null
  /** The arrival facts have changed since: the order moves back until a new one is issued. */
  readonly outdated: boolean
}>

export type IssuedEstimate = Recorded<{
  readonly scope: ReadScope
  readonly digest: string
  readonly diagnosisId: string
  /** What the findings offered when it was issued. While newer findings offer the same, no new estimate is needed. */
  readonly offers: string
  /** The findings that it was issued on: the reason that a customer reads beside a bundle. */
  readonly findings: readonly Finding[]
  readonly shown: readonly Recorded<PayloadOf<'estimate.shown'>>[]
}>

/** A bundle as issued. `asWritten`: the words of a first version, printed in place of made ones. */
export type IssuedBundle = PayloadOf<'estimate.issued'>['scope']['bundles'][number] & {
  readonly asWritten?: { readonly title: string; readonly reason: string }
}

type ReadScope = Omit<PayloadOf<'estimate.issued'>['scope'], 'bundles'> & {
  readonly bundles: readonly IssuedBundle[]
}

/** A stop that the customer was told about, for the wheels that it concerned then. */
export type StopTold = Written & { readonly wheels: readonly WheelPosition[] }

/** One fact that two devices recorded; the last of `records` counts until a person withdraws one. */
export type Conflict = {
  readonly fact:
    | 'gauge'
    | 'sensor'
    | 'stem'
    | 'valve'
    | 'tread'
    | 'tire-size'
    | 'date-code'
    | 'tire-damage'
    | 'fastener-damage'
    | 'control-module'
    | 'warning-light'
  readonly phase: 'arrival' | 'closing'
  readonly wheel: WheelPosition | null
  /** Both say the same: there is nothing to decide, and both stay on record. */
  readonly agree: boolean
  readonly records: readonly Written[]
}

/** A payment as it counts now. `corrections`: what it was before each correction, and who corrected it, oldest first. */
export type NotedPayment = Recorded<
  PayloadOf<'payment.noted'> & {
    readonly corrections: readonly Recorded<
      Pick<PayloadOf<'payment.noted'>, 'money' | 'method'> & { readonly why: string }
    >[]
  }
>

export type BundleDecision = Recorded<{
  readonly revision: number
  readonly answer: Answer
  readonly deferredUntil: string | null
  readonly cautionsShown: readonly CautionReference[]
  /** The Yes that it takes back, before any work was begun. */
  readonly takesBack: Written | null
}>

/**
 * What can be wrong with a wheel: what is found at a step, a bulge that was seen on arrival, and holes by their verdict:
 * those that may be repaired, and those that may not.
 */
export type FoundKind = TroubleKind | 'bulge' | 'hole' | 'hole-beyond-repair'

/** Something that is not right, found at a step or by a look inside a tire. */
export type FoundTrouble = Recorded<Omit<PayloadOf<'trouble.found'>, 'what'> & { readonly what: FoundKind }>

/** A hold that a person settled. `words`: what they found out, as a digest. */
export type SettledHold = Recorded<{ readonly hold: Recorded<Hold>; readonly words: string }>

/** What closed a step. `value`: what was recorded that no other kind of entry has a field for. */
export type Closing = Recorded<{ readonly kind: Kind; readonly value: PayloadOf<'step.closed'>['value'] }>

/** The state of an order, computed from its entries by `fold`; a stored copy is only a cache. */
export type OrderState = {
  readonly orderId: string
  readonly shopId: string
  readonly seq: number
  readonly headHash: string
  readonly marks: readonly Mark[]
  readonly opened: Recorded<PayloadOf<'order.opened'> & { readonly orderNumber: string | null }> | null
  readonly locationId: string | null
  /** Every time that was promised, oldest first; `null`: none any more. The last one is also in `opened`. */
  readonly promises: readonly Recorded<{ readonly promisedAt: string | null }>[]
  readonly complaint: Recorded<{
    readonly words: string
    readonly reportedLight: LightBehavior | null
    readonly events: EventEvidence[]
  }> | null
  readonly authority: {
    readonly look: Recorded<PayloadOf<'authority.given'>> | null
    readonly drive: Recorded<PayloadOf<'authority.given'>> | null
  }
  readonly sheet: Recorded<{ readonly sheet: SpecificationSheet }> | null
  readonly surroundings: Recorded<PayloadOf<'surroundings.recorded'>> | null
  readonly assigned: Recorded<PayloadOf<'order.assigned'>> | null
  readonly wait: Recorded<PayloadOf<'wait.set'>> | null
  readonly arrival: VehicleCheck
  readonly closing: VehicleCheck
  /** What the findings called for and nobody checked, with the reason. */
  readonly skippedChecks: readonly Recorded<PayloadOf<'check.skipped'>>[]
  readonly conflicts: readonly Conflict[]
  readonly diagnosis: IssuedDiagnosis | null
  /** Why it came back after our work, as it was said last; `null`: nobody has said yet, or it is no comeback. */
  readonly comeback: Recorded<PayloadOf<'comeback.judged'>> | null
  readonly stopsTold: Readonly<Record<string, StopTold>>
  /** By finding: the refusal, with the wheels that the finding concerned then. */
  readonly refusals: Readonly<
    Record<string, Recorded<PayloadOf<'refusal.recorded'> & { readonly wheels: readonly WheelPosition[] }>>
  >
  readonly contacts: readonly Recorded<PayloadOf<'contact.made'>>[]
  readonly estimates: readonly IssuedEstimate[]
  readonly decisions: readonly Recorded<PayloadOf<'estimate.decided'>>[]
  readonly answers: Readonly<Record<string, BundleDecision>>
  readonly plan: Recorded<{ readonly plan: PlanInForce }> | null
  readonly closed: Readonly<Record<string, Closing>>
  readonly setAside: Readonly<Record<string, Recorded<{ readonly reason: string }>>>
  readonly figures: Readonly<Partial<Record<SafetyFigure, Recorded<{ readonly reference: string }>>>>
  readonly promised: Recorded<PayloadOf<'part.promised'>> | null
  readonly work: Readonly<Partial<Record<WheelPosition, WheelWork>>>
  readonly troubles: readonly FoundTrouble[]
  readonly relearn: Recorded<PayloadOf<'relearn.done'>> | null
  /** As the vehicle leaves, where it was read before the hand-back. */
  readonly odometerLeaving: Recorded<{ readonly odometer: Distance; readonly confirmed: boolean }> | null
  /** The drive that the vehicle has left for and is not back from. */
  readonly onTheRoad: Recorded<PayloadOf<'drive.left'>> | null
  /** `left`: the entry that it left with; `null` where nobody recorded one. */
  readonly drives: readonly Recorded<PayloadOf<'drive.done'> & { readonly left: Written | null }>[]
  /** `shared`: the customer sees it on the page behind their link. */
  readonly photos: readonly Recorded<PayloadOf<'photo.attached'> & { readonly shared: boolean }>[]
  readonly notes: readonly Recorded<{ readonly words: string }>[]
  /** That money was received or given back, as corrected; how much is in the money side that each names. */
  readonly payments: readonly NotedPayment[]
  readonly holds: readonly Recorded<Hold>[]
  /** What a person has settled, with what they wrote: it shuts nothing any more and stays on record. */
  readonly settledHolds: readonly SettledHold[]
  readonly reports: readonly Recorded<PayloadOf<'report.sealed'> & { readonly reportNumber: string | null }>[]
  readonly handedBack: Recorded<PayloadOf<'order.handed_back'>> | null
  readonly ended: Recorded<{
    readonly how: 'refused' | 'withdrawn'
    readonly reason: string
    readonly words: string
  }> | null
}

const untouchedCheck: VehicleCheck = { wheels: {}, tires: {}, module: null, telltale: null }

/** An order before its first entry. */
export const blankOrder = (shopId: string, orderId: string): OrderState => ({
  orderId,
  shopId,
  seq: 0,
  headHash: '0'.repeat(64),
  marks: [],
  opened: null,
  locationId: null,
  promises: [],
  complaint: null,
  authority: { look: null, drive: null },
  sheet: null,
  surroundings: null,
  assigned: null,
  wait: null,
  arrival: untouchedCheck,
  closing: untouchedCheck,
  skippedChecks: [],
  conflicts: [],
  diagnosis: null,
  comeback: null,
  stopsTold: {},
  refusals: {},
  contacts: [],
  estimates: [],
  decisions: [],
  answers: {},
  plan: null,
  closed: {},
  setAside: {},
  figures: {},
  promised: null,
  work: {},
  troubles: [],
  relearn: null,
  odometerLeaving: null,
  onTheRoad: null,
  drives: [],
  photos: [],
  notes: [],
  payments: [],
  holds: [],
  settledHolds: [],
  reports: [],
  handedBack: null,
  ended: null,
})

export const untouchedWheel: WheelWork = {
  removed: null,
  mounted: null,
  rounds: {},
  overtaken: [],
  earlierFittings: [],
  checked: null,
  part: null,
  programmed: null,
  fitted: null,
  leak: null,
  pressure: null,
  broken: null,
  inside: null,
  holes: null,
}

export const unreadWheel: WheelReadings = { mounted: null, gauge: null, sensor: null, notPossible: [] }
