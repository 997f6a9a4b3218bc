import { valueAt } from '../../evidence/evidence-faults.ts'
import type { Facts } from '../facts/facts.ts'
import { checksFor } from './all-checks.ts'
import type { FieldCheck } from './field-check.ts'

/**
 * The facts that nobody has got and nobody has noted as impossible to get. An event counts as asked when the evidence
 * mentions its kind, whatever the answer.
 */
export const uncheckedFacts = (facts: Facts): readonly FieldCheck[] =>
  checksFor(facts).filter(({ field }) => isAbsent(facts, field) && !facts.notPossible(field))

const isAbsent = (facts: Facts, field: string): boolean => {
  const path = field.split('.')
  if (path[0] === 'events' && path.length === 2) {
    return !(facts.evidence.events ?? []).some((event) => event.kind === path[1])
  }
  if (field === 'controlModule.ids') return facts.stored.all.size === 0
  const value = valueAt(facts.evidence, path)
  return value === undefined || value === null
}
