import type { Diagnosis } from '@bayledger/reckoning/diagnosis/diagnosis'
import { canonicalText } from '../../digests.ts'

/**
 * Whether two diagnoses hold the same facts. One that was issued in words is compared without them and without the
 * codes of its reasons, which it did not have.
 */
export const areSameFacts = (one: Diagnosis, other: Diagnosis): boolean =>
  isInWords(one) || isInWords(other)
    ? canonicalText(withoutWords(one)) === canonicalText(withoutWords(other))
    : canonicalText(one) === canonicalText(other)

const isInWords = ({ findings, contradictions, nextChecks }: Diagnosis): boolean =>
  [...findings, ...contradictions, ...nextChecks].some(({ asWritten }) => asWritten !== undefined)

const withoutWords = (diagnosis: Diagnosis): unknown => ({
  ...diagnosis,
  findings: diagnosis.findings.map(({ asWritten: _words, because, ...facts }) => ({
    ...facts,
    because: because.map(({ field, value, unit }) => ({ field, value, unit })),
  })),
  contradictions: diagnosis.contradictions.map(({ code }) => code),
  nextChecks: diagnosis.nextChecks.map(({ asWritten: _words, ...facts }) => facts),
})
