import * as z from 'zod/mini'
import { WheelPosition } from '../wheels.ts'
import { FindingCode } from './finding-codes.ts'
import { ReasonCode } from './reason-codes.ts'

export { FindingCode }

export const Confidence = z.enum(['firm', 'likely', 'possible'])
export type Confidence = z.infer<typeof Confidence>

export const FindingKind = z.enum(['stop', 'cause', 'also', 'note', 'ask'])
export type FindingKind = z.infer<typeof FindingKind>

export const Stop = z.enum(['do-not-drive', 'do-not-open-the-tire', 'repair-before-release'])
export type Stop = z.infer<typeof Stop>

/** What an estimate may offer for a finding: parts first, then work. */
export const Offer = z.enum([
  'sensor',
  'set-of-four',
  'service-kit',
  'stem',
  'tire',
  'fastener-repair',
  'reprogram',
  'sensor-clean',
  'relearn',
  'reset',
  'leak-find',
  'pressure-set',
  'outside-work',
])
export type Offer = z.infer<typeof Offer>

/** The offers that put a part on the bill. */
export const partOffers: ReadonlySet<Offer> = new Set<Offer>([
  'sensor',
  'set-of-four',
  'service-kit',
  'stem',
  'tire',
  'fastener-repair',
])

/** Gates that stay closed until the finding is settled. */
export const Hold = z.enum([
  'wheel-removal',
  'inflation',
  'bead-break',
  'pressure-setting',
  'relearn',
  'road',
  'hand-back',
])
export type Hold = z.infer<typeof Hold>

/** Codes and figures from which words are made, in any language. Pressures are in `unit`. */
export const Figures = z.record(
  z.string(),
  z.union([z.string(), z.number(), z.array(z.union([z.string(), z.number()]))]),
)
export type Figures = z.infer<typeof Figures>

/** One piece of evidence behind a finding: the field as it was entered, and what its value shows. */
export const Reason = z.strictObject({
  field: z.string(),
  value: z.union([z.string(), z.number(), z.boolean(), z.null()]),
  unit: z.nullable(z.string()),
  code: ReasonCode,
  values: Figures,
})
export type Reason = z.infer<typeof Reason>

export const Finding = z.strictObject({
  code: FindingCode,
  wheels: z.array(WheelPosition),
  confidence: Confidence,
  kind: FindingKind,
  /** For a stop only. */
  stop: z.optional(Stop),
  because: z.array(Reason),
  figures: Figures,
  offers: z.array(Offer),
  holds: z.array(Hold),
  asWritten: z.optional(z.strictObject({ next: z.string(), customer: z.string() })),
})
export type Finding = z.infer<typeof Finding>

export const ContradictionCode = z.enum([
  'light-against-evidence',
  'light-off-tire-low',
  'light-on-tires-right',
  'gauge-against-sensors',
  'fault-not-flashed',
  'lamp-dark-yet-lit',
  'positions-exchanged',
  'stray-sensors-heard',
  'light-reported-otherwise',
  'sheet-frequency-doubtful',
  'sensor-older-than-reported',
  'gauge-unsupported',
  'hot-corner-tires-cold',
])
export type ContradictionCode = z.infer<typeof ContradictionCode>

/** Two facts that cannot both be true; both are kept and shown. */
export const Contradiction = z.strictObject({
  code: ContradictionCode,
  values: Figures,
  asWritten: z.optional(z.strictObject({ says: z.string(), do: z.string() })),
})
export type Contradiction = z.infer<typeof Contradiction>

/** A fact worth getting next: the more different verdicts its values lead to, the sooner. */
export const NextCheck = z.strictObject({
  field: z.string(),
  couldChange: z.array(FindingCode),
  verdicts: z.int(),
  seconds: z.number(),
  asWritten: z.optional(z.strictObject({ ask: z.string() })),
})
export type NextCheck = z.infer<typeof NextCheck>

/**
 * Facts only: codes, wheels and figures. `asWritten` is present only in what was issued before diagnoses held codes:
 * its words are printed in place of made ones.
 */
export const Diagnosis = z.strictObject({
  ruleSet: z.string(),
  primary: z.nullable(FindingCode),
  findings: z.array(Finding),
  contradictions: z.array(Contradiction),
  unchecked: z.array(z.string()),
  nextChecks: z.array(NextCheck),
})
export type Diagnosis = z.infer<typeof Diagnosis>
