import type { Evidence } from '../../evidence/evidence-schema.ts'
import type { Facts } from '../facts/facts.ts'
import { allChecks } from './all-checks.ts'
import type { FieldCheck } from './field-check.ts'

/**
 * The facts that nobody has got and nobody has noted as impossible to get. An event counts as asked when the evidence
 * mentions its kind, whatever the answer.
 */
export const uncheckedFacts = (facts: Facts): readonly FieldCheck[] =>
  located.flatMap(({ check, isAbsent }) =>
    isAbsent(facts) && (check.applies?.(facts) ?? true) && !facts.notPossible(check.field) ? [check] : [],
  )

type IsAbsent = (facts: Facts) => boolean

const absenceOf = (field: string): IsAbsent => {
  if (field === 'controlModule.ids') return ({ stored }) => stored.all.size === 0
  const [head, kind, ...more] = field.split('.')
  if (head === 'events' && more.length === 0)
    return ({ evidence }) => !(evidence.events ?? []).some((event) => event.kind === kind)
  const path = field.split('.')
  return ({ evidence }) => nothingAt(evidence, path)
}

const nothingAt = (evidence: Evidence, path: readonly string[]): boolean => {
  let node: unknown = evidence
  for (const name of path) {
    node = (node as Readonly<Record<string, unknown>>)[name]
    if (node === null || node === undefined) return true
  }
  return false
}

const located = allChecks.map((check) => ({ check, isAbsent: absenceOf(check.field) }))
