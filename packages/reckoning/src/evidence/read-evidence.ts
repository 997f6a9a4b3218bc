import { evidenceWords } from '../words/evidence.ts'
import { type EvidenceFault, type ParsedEvidence, parseEvidence } from './evidence.ts'
import { mostEvidenceBytes } from './most-evidence.ts'

/** The fault for evidence that is too large to read. */
const tooMuchEvidence: EvidenceFault = {
  field: 'evidence',
  found: evidenceWords.found.tooMuch,
  allowed: evidenceWords.size,
}

/**
 * Evidence as it comes from a file or over the wire: JSON text in UTF-8, null where there was more of it than
 * `mostEvidenceBytes`. All readers that use this report the same faults in the same words.
 */
export const readEvidence = (bytes: Uint8Array | null): ParsedEvidence => {
  if (bytes === null || bytes.length > mostEvidenceBytes) return { ok: false, faults: [tooMuchEvidence] }
  const json = parseJson(new TextDecoder().decode(bytes))
  return 'fault' in json ? { ok: false, faults: [json.fault] } : parseEvidence(json.value)
}

/** One fault on one line. */
export const faultLine = ({ field, found, allowed }: EvidenceFault): string =>
  evidenceWords.line(field, found, allowed)

const parseJson = (text: string): { readonly value: unknown } | { readonly fault: EvidenceFault } => {
  try {
    return { value: JSON.parse(text) }
  } catch (error) {
    const why = (error instanceof Error ? error.message : String(error)).replace(/\s+/g, ' ').slice(0, 200)
    return {
      fault: { field: 'evidence', found: evidenceWords.found.notJson(why), allowed: evidenceWords.oneObject },
    }
  }
}
