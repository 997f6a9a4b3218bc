import type { Rule } from '../rule.ts'

/** What decides which wheels there are and which of them the vehicle listens to: every rule rests on these. */
const readByAll = [
  'vehicle.system',
  'vehicle.spare',
  'vehicle.spareMonitored',
  'wheels.*.mounted',
  'wheels.*.answer',
  'controlModule.state',
] as const

/** For each of the rules, whether it may find something else when a field changes. Answers are kept by field. */
export const readersAmong = (rules: readonly Rule[]): ((field: string) => ReadonlySet<Rule>) => {
  const patterns = rules.map((rule) => ({
    rule,
    reads: [...readByAll, ...rule.reads].map((pattern) => pattern.split('.')),
  }))
  const known = new Map<string, ReadonlySet<Rule>>()
  return (field) => {
    const found = known.get(field)
    if (found !== undefined) return found
    const path = field.split('.')
    const readers = new Set(
      patterns.flatMap(({ rule, reads }) => (reads.some((pattern) => covers(pattern, path)) ? [rule] : [])),
    )
    known.set(field, readers)
    return readers
  }
}

/** A pattern and a path meet where one is the beginning of the other; * stands for any name. */
const covers = (pattern: readonly string[], path: readonly string[]): boolean =>
  pattern.every((name, index) => name === '*' || path[index] === undefined || path[index] === name)
