import {
  Confidence,
  ContradictionCode,
  Figures,
  FindingCode,
  FindingKind,
  Hold,
  Offer,
  Stop,
} from '@bayledger/reckoning/diagnosis/diagnosis'
import { WheelPosition } from '@bayledger/reckoning/wheels'
import * as z from 'zod/mini'

/** One piece of evidence behind a finding, with what its value shows in words. */
const WordedReason = z.strictObject({
  field: z.string(),
  value: z.union([z.string(), z.number(), z.boolean(), z.null()]),
  unit: z.nullable(z.string()),
  says: z.string(),
})

const WordedFinding = z.strictObject({
  code: FindingCode,
  wheels: z.array(WheelPosition),
  confidence: Confidence,
  kind: FindingKind,
  /** Of a stop only. */
  stop: z.optional(Stop),
  because: z.array(WordedReason),
  next: z.string(),
  customer: z.string(),
  figures: Figures,
  offers: z.array(Offer),
  holds: z.array(Hold),
})

/** A diagnosis as it is answered to people and other programs: the facts, and the words that are made from them. */
export const WordedDiagnosis = z.strictObject({
  ruleSet: z.string(),
  primary: z.nullable(FindingCode),
  findings: z.array(WordedFinding),
  contradictions: z.array(z.strictObject({ code: ContradictionCode, says: z.string(), do: z.string() })),
  unchecked: z.array(z.string()),
  nextChecks: z.array(
    z.strictObject({
      field: z.string(),
      ask: z.string(),
      couldChange: z.array(FindingCode),
      verdicts: z.int(),
      seconds: z.number(),
    }),
  ),
})
