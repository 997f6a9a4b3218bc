import type * as z from 'zod/mini'
import { evidenceWords } from '../words/evidence.ts'
import { knownFieldsAt } from './evidence-fields.ts'

/** One fault of given evidence: the field, its value, and what is allowed. */
export type EvidenceFault = { readonly field: string; readonly found: string; readonly allowed: string }

/** Turns schema issues into faults in our own words. `root` is the schema that raised them. */
export const faultsOf = (
  root: z.core.$ZodType,
  issues: readonly z.core.$ZodIssue[],
  input: unknown,
): EvidenceFault[] =>
  issues.flatMap((issue) => {
    const path = issue.path.map(String)
    if (issue.code === 'unrecognized_keys') {
      const known = evidenceWords.unknownField(knownFieldsAt(root, path))
      return issue.keys.map((name) => ({
        field: fieldName([...path, name]),
        found: shown(valueAt(input, [...path, name])),
        allowed: known,
      }))
    }
    return [{ field: fieldName(path), found: shown(valueAt(input, path)), allowed: allowed(issue) }]
  })

const allowed = (issue: z.core.$ZodIssue): string => {
  switch (issue.code) {
    case 'invalid_type':
      return evidenceWords.types[issue.expected] ?? issue.expected
    case 'invalid_value':
      return evidenceWords.oneOf(issue.values.map(String))
    case 'too_small':
      if (issue.origin === 'string') return evidenceWords.notEmpty
      return evidenceWords.over(issue.minimum, issue.inclusive ?? false)
    case 'too_big':
      if (issue.origin === 'string') return evidenceWords.atMost.text(issue.maximum)
      if (issue.origin === 'array') return evidenceWords.atMost.list(issue.maximum)
      return evidenceWords.atMost.number(issue.maximum)
    case 'invalid_format':
      return evidenceWords.hexadecimal
    case 'custom':
      return evidenceWords.sensorId
    default:
      return evidenceWords.anotherValue
  }
}

/** The value at a path of an unknown input, or undefined where the path leads nowhere. */
export const valueAt = (input: unknown, path: readonly string[]): unknown =>
  path.reduce<unknown>(
    (value, name) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, name)
        ? (value as Record<string, unknown>)[name]
        : undefined,
    input,
  )

const longestShown = 60

/** Short and on one line, whatever was sent. */
const shown = (value: unknown): string => {
  if (value === undefined) return evidenceWords.found.nothing
  if (Array.isArray(value)) return evidenceWords.found.list(value.length)
  if (typeof value === 'object' && value !== null) return evidenceWords.found.object
  const written = JSON.stringify(value) ?? String(value)
  return written.length > longestShown ? `${written.slice(0, longestShown)}…` : written
}

const fieldName = (path: readonly string[]): string =>
  path.map((name) => (/^[\w-]{1,60}$/.test(name) ? name : shown(name))).join('.') || 'evidence'
