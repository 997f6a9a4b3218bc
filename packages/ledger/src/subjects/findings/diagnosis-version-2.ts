import { type ContradictionCode, Diagnosis, type FindingCode } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { ReasonCode } from '@bayledger/reckoning/diagnosis/reason-codes'
import * as z from 'zod/mini'
import { Digest } from '../../text.ts'
import { EvidenceVersion1 } from './evidence-version-1.ts'

/** What rule set 4 added, and version 2 of `diagnosis.issued` never held. */
const later = {
  findings: ['puncture-not-repairable', 'puncture-found', 'spare-under-label'],
  reasons: ['beyond-repair-limits', 'puncture-seen', 'under-label'],
  contradictions: ['gauge-unsupported', 'hot-corner-tires-cold'],
} as const satisfies {
  readonly findings: readonly FindingCode[]
  readonly reasons: readonly ReasonCode[]
  readonly contradictions: readonly ContradictionCode[]
}

/** Version 2 of `diagnosis.issued`: codes in place of words, up to rule set 3. Its evidence was that of version 1. */
export const DiagnosisIssuedVersion2 = z.strictObject({
  evidence: EvidenceVersion1,
  diagnosis: Diagnosis.check(
    z.refine(
      ({ findings, contradictions }) =>
        !findings.some(
          ({ code, because }) =>
            isOneOf(later.findings, code) || because.some((reason) => isOneOf(later.reasons, reason.code)),
        ) && !contradictions.some(({ code }) => isOneOf(later.contradictions, code)),
      { path: ['findings'], error: 'a diagnosis of version 2 has only the codes that version 2 knew' },
    ),
  ),
  evidenceDigest: Digest,
})

const isOneOf = (codes: readonly string[], code: string): boolean => codes.includes(code)

/** Version 2 to version 3: nothing changes. */
export const diagnosisToVersion3 = (payload: z.infer<typeof DiagnosisIssuedVersion2>) => payload
