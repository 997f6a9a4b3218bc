import type * as z from 'zod/mini'
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
      const known = knownFieldsAt(root, path).join(', ')
      return issue.keys.map((name) => ({
        field: fieldName([...path, name]),
        found: shown(valueAt(input, [...path, name])),
        allowed: `no field of this name; known here are ${known}`,
      }))
    }
    return [{ field: fieldName(path), found: shown(valueAt(input, path)), allowed: allowed(issue) }]
  })

const typeWords: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'text',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
}

const allowed = (issue: z.core.$ZodIssue): string => {
  switch (issue.code) {
    case 'invalid_type':
      return typeWords[issue.expected] ?? issue.expected
    case 'invalid_value':
      return `one of ${issue.values.map(String).join(', ')}`
    case 'too_small':
      if (issue.origin === 'string') return 'text that is not empty'
      return `${issue.inclusive ? 'at least' : 'more than'} ${issue.minimum}`
    case 'too_big':
      if (issue.origin === 'string') return `text of at most ${issue.maximum} characters`
      if (issue.origin === 'array') return `at most ${issue.maximum} entries`
      return `at most ${issue.maximum}`
    case 'invalid_format':
      return 'hexadecimal digits, 0-9 and A-F, at most 16 of them'
    case 'custom':
      return 'the ID of a sensor; all zeros or all ones is what a reader shows when it read none'
    default:
      return 'another value'
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
  if (value === undefined) return 'nothing'
  if (Array.isArray(value)) return `a list of ${value.length}`
  if (typeof value === 'object' && value !== null) return 'an object'
  const written = JSON.stringify(value) ?? String(value)
  return written.length > longestShown ? `${written.slice(0, longestShown)}…` : written
}

const fieldName = (path: readonly string[]): string =>
  path.map((name) => (/^[\w-]{1,60}$/.test(name) ? name : shown(name))).join('.') || 'evidence'
