import { mostEvidenceBytes } from '@bayledger/reckoning/evidence/most-evidence'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id } from './identity.ts'
import { WordedDiagnosis } from './worded-diagnosis.ts'

export const computeDiagnosis = endpoint({
  operationId: 'computeDiagnosis',
  summary: 'Findings for evidence that is not in an order: the same as `npm run -s diagnose` prints.',
  method: 'POST',
  path: '/api/diagnoses',
  access: { who: 'staff' },
  /** The command's own reader reports the faults, so nothing parses it before. */
  body: z.record(z.string(), z.unknown()),
  bodyUnreadUpTo: mostEvidenceBytes,
  replies: { 200: WordedDiagnosis },
  problems: ['EVIDENCE_INVALID'],
})

/** Findings as issued beside what the present rules make of the same evidence. */
export const RulesComparison = z.strictObject({
  issuedByRuleSet: z.string(),
  todaysRuleSet: z.string(),
  /** One sentence a difference; empty where both say the same. */
  differences: z.array(z.string()),
  today: WordedDiagnosis,
})
export type RulesComparison = z.infer<typeof RulesComparison>

export const compareWithTodaysRules = endpoint({
  operationId: 'compareWithTodaysRules',
  summary: "What today's rules say of the evidence behind an order's findings; nothing is written.",
  method: 'GET',
  path: '/api/orders/:orderId/diagnosis/today',
  access: { who: 'staff' },
  params: z.strictObject({ orderId: Id }),
  /** `null`: no findings were issued on this order. */
  replies: { 200: z.strictObject({ comparison: z.nullable(RulesComparison) }) },
  problems: ['ORDER_NOT_FOUND', 'ORDER_READ_ONLY'],
})
