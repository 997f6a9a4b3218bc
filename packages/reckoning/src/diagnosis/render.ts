import { englishFindings } from '../catalog/en-findings.ts'
import { renderSentence } from '../catalog/render-sentence.ts'
import { valueAt } from '../evidence/evidence-faults.ts'
import type { Evidence } from '../evidence/evidence-schema.ts'
import type { Finding, FindingCode, Reason } from './diagnosis.ts'
import type { Judged, Judgment } from './engine/judge.ts'
import type { Ground } from './rule.ts'

/** A finding with its reasons, figures and sentence, from a rule that stands. */
export const findingOf = ({ facts, primary }: Judgment, { rule, match }: Judged): Finding => {
  const wheels = facts.wheels.filter((wheel) => match.wheels.includes(wheel.position))
  const figures = match.figures?.(wheels) ?? {}
  return {
    code: rule.code,
    wheels: [...match.wheels],
    confidence: match.confidence ?? rule.confidence,
    kind: kindOf(match.kind ?? rule.kind, rule.code, primary),
    ...(rule.stop === undefined ? {} : { stop: match.stop ?? rule.stop }),
    because: match.because(wheels).map((ground) => reasonOf(facts.evidence, ground)),
    next: match.next ?? rule.next,
    customer: renderSentence(englishFindings, rule.code, figures),
    figures,
    offers: [...(match.offers ?? rule.offers)],
    holds: [...(match.holds ?? rule.holds)],
  }
}

const kindOf = (kind: Finding['kind'], code: FindingCode, primary: FindingCode | null): Finding['kind'] =>
  kind === 'also' && code === primary ? 'cause' : kind

const reasonOf = (evidence: Evidence, { field, says }: Ground): Reason => ({
  field,
  value: field.startsWith('events.') ? true : plainValue(valueAt(evidence, field.split('.'))),
  unit: unitOf(evidence, field),
  says,
})

const plainValue = (value: unknown): Reason['value'] => {
  if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') return value
  return Array.isArray(value) ? value.map(listed).join(', ') : null
}

/** Of a list of codes only the class is worth repeating. */
const listed = (one: unknown): string =>
  typeof one === 'object' && one !== null && 'class' in one ? String(one.class) : String(one)

const unitOf = ({ units }: Evidence, field: string): string | null => {
  if (/(gauge|sensorPressure)$|^vehicle\.(placard|warnAt|sidewallMaximum)\.(front|rear|spare)$/.test(field)) {
    return units.pressure
  }
  if (/(emperature|outdoor|overnightLow)$/.test(field)) return `°${units.temperature}`
  if (/ltitude$/.test(field)) return units.altitude
  if (/MHz$/.test(field)) return 'MHz'
  if (/AgeMonths$/.test(field)) return 'months'
  if (/AgeYears$/.test(field)) return 'years'
  if (/minutesDriven$/.test(field)) return 'min'
  return null
}
