import { readingOrder, type WheelPosition } from '../wheels.ts'
import type { Confidence, Figures, FindingCode, FindingKind, Hold, Offer, Stop } from './diagnosis.ts'
import type { Facts } from './facts/facts.ts'
import type { WheelFacts } from './facts/wheel-facts.ts'
import type { ReasonCode, ReasonFigures } from './reason-codes.ts'

/** What a value shows: a code, and the figures that this code needs. */
export type Shown = {
  [Code in Exclude<ReasonCode, 'as-written'>]: Code extends keyof ReasonFigures
    ? { readonly code: Code; readonly values: ReasonFigures[Code] }
    : { readonly code: Code; readonly values?: never }
}[Exclude<ReasonCode, 'as-written'>]

/** A field of the evidence and what its value shows. */
export type Ground = { readonly field: string } & Shown

/** What else was found. */
export type Beside = { readonly stop: boolean }

/** A rule that applies: where, with what confidence, and why. Reasons and figures are computed only for a finding that stays. */
export type Match = {
  readonly wheels: readonly WheelPosition[]
  readonly confidence?: Confidence
  readonly kind?: FindingKind
  readonly stop?: Stop
  readonly offers?: readonly Offer[]
  readonly holds?: readonly Hold[]
  /** Called with the wheels that are left when another finding has made this one idle on some of them. */
  readonly because: (wheels: readonly WheelFacts[]) => readonly Ground[]
  readonly figures?: (wheels: readonly WheelFacts[], beside: Beside) => Figures
}

/** What earlier rules have found so far; only a rule marked `concludes` reads it. */
export type PriorFindings = {
  readonly has: (code: FindingCode, wheel?: WheelPosition) => boolean
  readonly wheelsOf: (code: FindingCode) => readonly WheelPosition[]
  readonly codes: () => readonly FindingCode[]
  readonly codesOn: (wheel: WheelPosition) => readonly FindingCode[]
  /** A prior finding explains the observed light. */
  readonly explained: () => boolean
  readonly askOpen: () => boolean
}

/** One rule without its name, which is its key in the book of rules. `when` and `means` are printed in docs/diagnosis.md. */
export type RuleBody = {
  readonly kind: FindingKind
  /** For a stop: what it forbids, unless a match says otherwise. */
  readonly stop?: Stop
  /** Used where a match does not say otherwise. */
  readonly confidence: Confidence
  /** The fields that the rule reads, with * for any wheel. */
  readonly reads: readonly string[]
  readonly when: string
  readonly means: string
  readonly offers: readonly Offer[]
  readonly holds: readonly Hold[]
} & (
  | { readonly concludes?: false; readonly find: (facts: Facts) => Match | null }
  | { readonly concludes: true; readonly find: (facts: Facts, prior: PriorFindings) => Match | null }
)

/** A rule for every finding: a finding without a rule does not compile. */
export type RuleBook = Readonly<Record<FindingCode, RuleBody>>

export type Rule = RuleBody & { readonly code: FindingCode }

/** A match on the wheels that satisfy a test; null if none does. */
export const onWheels = (
  wheels: readonly WheelFacts[],
  test: (wheel: WheelFacts) => boolean,
  match: (wheels: readonly WheelFacts[]) => Omit<Match, 'wheels'>,
): Match | null => {
  if (!wheels.some(test)) return null
  const found = wheels.filter(test)
  return { wheels: positionsOf(found), ...match(found) }
}

export const positionsOf = (wheels: readonly WheelFacts[]): WheelPosition[] =>
  readingOrder.filter((position) => wheels.some((wheel) => wheel.position === position))

/** One field with what its value shows. */
export const ground = (field: string, shown: Shown): Ground => ({ field, ...shown })

/** The same ground for each wheel, its field named from the wheel's position. */
export const groundsOf = (
  wheels: readonly WheelFacts[],
  field: string,
  shows: (wheel: WheelFacts) => Shown,
): Ground[] => wheels.map((wheel) => ({ field: `wheels.${wheel.position}.${field}`, ...shows(wheel) }))

/** Figures that name a match's wheels: one by `wheel`, several by `wheels`. */
export const wheelFigures = (wheels: readonly WheelFacts[]): Figures => {
  const [first, ...others] = positionsOf(wheels)
  if (first === undefined) return {}
  return others.length === 0 ? { wheel: first } : { wheels: [first, ...others] }
}
