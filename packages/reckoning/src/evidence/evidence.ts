import * as z from 'zod/mini'
import { type EvidenceFault, faultsOf } from './evidence-faults.ts'
import { rangeFaults } from './evidence-ranges.ts'
import { Evidence } from './evidence-schema.ts'

export * from './evidence-schema.ts'
export type { EvidenceFault }

export type ParsedEvidence =
  | { readonly ok: true; readonly evidence: Evidence }
  | { readonly ok: false; readonly faults: EvidenceFault[] }

/**
 * Reads evidence from anything. Every fault names the field, what was found there and what is allowed, so that
 * whoever typed or sent it can mend it. Unknown fields are faults: a misspelled field would else read as "not
 * checked".
 */
export const parseEvidence = (input: unknown): ParsedEvidence => {
  const parsed = z.safeParse(Evidence, input)
  if (!parsed.success) return { ok: false, faults: faultsOf(Evidence, parsed.error.issues, input) }
  const faults = rangeFaults(Evidence, parsed.data)
  return faults.length > 0 ? { ok: false, faults } : { ok: true, evidence: parsed.data }
}
