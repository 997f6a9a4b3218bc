import * as z from 'zod/mini'
import { evidenceWords } from '../words/evidence.ts'
import { type EvidenceFault, faultsOf } from './evidence-faults.ts'
import { rangeFaults } from './evidence-ranges.ts'
import { Evidence } from './evidence-schema.ts'

export * from './evidence-schema.ts'
export type { EvidenceFault }

export type ParsedEvidence =
  | { readonly ok: true; readonly evidence: Evidence }
  | { readonly ok: false; readonly faults: EvidenceFault[] }

/** Faults beyond this number are counted, not listed. */
const mostFaults = 100

/**
 * Reads evidence from anything. Every fault names the field, what was found there and what is allowed, so that
 * whoever typed or sent it can correct it. Unknown fields are faults: a misspelled field would else read as "not
 * checked". Of very many faults, the first hundred are listed and the rest counted.
 */
export const parseEvidence = (input: unknown): ParsedEvidence => {
  const parsed = z.safeParse(Evidence, input)
  if (!parsed.success) return refused(faultsOf(Evidence, parsed.error.issues, input))
  const faults = rangeFaults(Evidence, parsed.data)
  return faults.length > 0 ? refused(faults) : { ok: true, evidence: parsed.data }
}

const refused = (faults: readonly EvidenceFault[]): ParsedEvidence => {
  const told = faults.slice(0, mostFaults)
  const more = faults.length - told.length
  const rest = { field: 'evidence', found: evidenceWords.found.moreFaults(more), allowed: evidenceWords.none }
  return { ok: false, faults: more > 0 ? [...told, rest] : told }
}
