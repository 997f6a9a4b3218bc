import { valueAt } from '../evidence/evidence-faults.ts'
import type { Evidence } from '../evidence/evidence-schema.ts'
import type { Finding, FindingCode, Reason } from './diagnosis.ts'
import type { Judged, Judgment } from './engine/judge.ts'
import type { Ground } from './rule.ts'

/** A finding with its reasons and figures, from a rule that applies. */
export const findingOf = ({ facts, primary, judged }: Judgment, { rule, match }: Judged): Finding => {
  const wheels = facts.wheels.filter((wheel) => match.wheels.includes(wheel.position))
  return {
    code: rule.code,
    wheels: [...match.wheels],
    confidence: match.confidence ?? rule.confidence,
    kind: kindOf(match.kind ?? rule.kind, rule.code, primary),
    ...(rule.stop === undefined ? {} : { stop: match.stop ?? rule.stop }),
    because: match.because(wheels).map((ground) => reasonOf(facts.evidence, ground)),
    figures: match.figures?.(wheels, { stop: judged.some((one) => one.rule.kind === 'stop') }) ?? {},
    offers: [...(match.offers ?? rule.offers)],
    holds: [...(match.holds ?? rule.holds)],
  }
}

const kindOf = (kind: Finding['kind'], code: FindingCode, primary: FindingCode | null): Finding['kind'] =>
  kind === 'also' && code === primary ? 'cause' : kind

const reasonOf = (evidence: Evidence, { field, code, values }: Ground): Reason => {
  const { path, unit } = fieldOfReason(field)
  return {
    field,
    value: path[0] === 'events' ? true : plainValue(valueAt(evidence, path)),
    unit: unit(evidence.units),
    code,
    values: values ?? {},
  }
}

const plainValue = (value: unknown): Reason['value'] => {
  if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') return value
  return Array.isArray(value) ? value.map(listed).join(', ') : null
}

/** Of a code its class, of a puncture its place. */
const listed = (one: unknown): string => {
  if (typeof one !== 'object' || one === null) return String(one)
  if ('class' in one) return String(one.class)
  return 'place' in one && typeof one.place === 'string' ? one.place : 'not-placed'
}

type UnitOf = (units: Evidence['units']) => string | null

/** The unit of a field's value, by the field's name; the first match counts. */
const unitsOfFields: readonly (readonly [field: RegExp, unit: UnitOf])[] = [
  [
    /(gauge|sensorPressure)$|^vehicle\.(placard|warnAt|sidewallMaximum)\.(front|rear|spare)$/,
    ({ pressure }) => pressure,
  ],
  [/(emperature|outdoor|overnightLow)$/, ({ temperature }) => `°${temperature}`],
  [/ltitude$/, ({ altitude }) => altitude],
  [/MHz$/, () => 'MHz'],
  [/AgeMonths$/, () => 'months'],
  [/AgeYears$/, () => 'years'],
  [/minutesDriven$/, () => 'min'],
]

type FieldOfReason = { readonly path: readonly string[]; readonly unit: UnitOf }

const known = new Map<string, FieldOfReason>()

/** Cached by field: there are few fields, and each diagnosis names the same ones. */
const fieldOfReason = (field: string): FieldOfReason => {
  const found = known.get(field)
  if (found !== undefined) return found
  const unit = unitsOfFields.find(([pattern]) => pattern.test(field))?.[1] ?? (() => null)
  const made = { path: field.split('.'), unit }
  known.set(field, made)
  return made
}
