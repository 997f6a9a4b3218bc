import type { FieldProblem } from '@bayledger/contract/problem'
import { illFormedIn } from '@bayledger/ledger/well-formed'
import type * as z from 'zod/mini'
import {
  allowedFormats,
  allowedTypes,
  allowedWords,
  illFormedWords,
  unknownField,
  wordless,
} from '../words/field-words.ts'

/** Every fault of one part of a request in words: the field, its value, and what is allowed. */
export const fieldProblems = (
  part: string,
  issues: readonly z.core.$ZodIssue[],
  input: unknown,
): FieldProblem[] =>
  issues.flatMap((issue): FieldProblem[] => {
    const path = issue.path.map(String)
    const field = path.length > 0 ? path.join('.') : part
    if (issue.code === 'unrecognized_keys')
      return issue.keys.map((key) => ({
        field: [...path, key].join('.'),
        ...unknownField,
      }))
    if (issue.code === 'invalid_union') {
      // Where one of them was meant, it is the one of which only a part is wrong, not the value as a whole.
      const meant = issue.errors.filter((branch) =>
        branch.some((inner) => inner.path.length > 0 || inner.code === 'unrecognized_keys'),
      )
      const branch = (meant.length > 0 ? meant : issue.errors).toSorted(
        (one, other) => one.length - other.length,
      )[0]
      if (branch && branch.length > 0)
        return fieldProblems(
          part,
          branch.map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] })),
          input,
        )
    }
    return [{ field, found: shown(valueAt(input, path)), allowed: allowed(issue) }]
  })

/** Texts that could not be stored and read back as they are, whichever field they are in, and values nested too deep. */
export const illFormedProblems = (part: string, input: unknown): FieldProblem[] =>
  illFormedIn(input).map(({ path, why }) => ({
    // Deep nesting is named by where it begins: its whole path would be as long as it is deep.
    field: (why === 'too-deep' ? path.slice(0, 6) : path).join('.') || part,
    ...illFormedWords[why],
  }))

const valueAt = (input: unknown, path: readonly string[]): unknown =>
  path.reduce<unknown>(
    (value, key) =>
      value !== null && typeof value === 'object' ? (value as Record<string, unknown>)[key] : undefined,
    input,
  )

const shown = (value: unknown): string => {
  const text = value === undefined ? 'nothing' : JSON.stringify(value)
  return text.length > 80 ? `${text.slice(0, 77)}...` : text
}

/** A schema that has words of its own says it best. */
const allowed = (issue: z.core.$ZodIssue): string => {
  if (issue.message !== wordless && issue.message !== '') return issue.message
  switch (issue.code) {
    case 'invalid_type':
      return allowedTypes[issue.expected] ?? issue.expected
    case 'invalid_value':
      return issue.values.length === 1
        ? JSON.stringify(issue.values[0])
        : allowedWords.oneOf(issue.values.map((value) => JSON.stringify(value)))
    case 'too_small':
      return allowedWords.atLeast(issue.origin, issue.minimum)
    case 'too_big':
      return allowedWords.atMost(issue.origin, issue.maximum)
    case 'invalid_format':
      return allowedFormats[issue.format] ?? allowedWords.form(issue.format)
    default:
      return allowedWords.other
  }
}
