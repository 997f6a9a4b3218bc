import type { FieldProblem } from '@bayledger/contract/problem'
import { illFormedIn } from '@bayledger/ledger/well-formed'
import type * as z from 'zod/mini'

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
        found: 'an unknown field',
        allowed: 'no such field; check its spelling or leave it out',
      }))
    if (issue.code === 'invalid_union') {
      const branch = issue.errors.toSorted((one, other) => one.length - other.length)[0]
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

const illFormedWords = {
  nul: { found: 'a NUL character', allowed: 'text without NUL' },
  'half-a-character': { found: 'half of a character', allowed: 'text of whole characters' },
  'too-deep': { found: 'more than 40 levels', allowed: 'lists and objects up to 40 levels deep' },
} as const

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

const typeWords: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
}

const formatWords: Readonly<Record<string, string>> = {
  uuid: 'an id (UUID)',
  datetime: 'an instant in UTC with milliseconds, as 2026-01-12T16:40:00.000Z',
  date: 'a day, as 2026-01-12',
  email: 'an e-mail address',
  regex: 'the form that this field takes',
}

/** What an issue says where its schema gives no words of its own. */
const wordless = 'Invalid input'

const allowed = (issue: z.core.$ZodIssue): string => {
  switch (issue.code) {
    case 'invalid_type':
      return typeWords[issue.expected] ?? issue.expected
    case 'invalid_value':
      return issue.values.length === 1
        ? JSON.stringify(issue.values[0])
        : `one of ${issue.values.map((value) => JSON.stringify(value)).join(', ')}`
    case 'too_small':
      return `${unitOf(issue.origin)}${issue.minimum} or more`
    case 'too_big':
      return `${unitOf(issue.origin)}${issue.maximum} or less`
    case 'invalid_format':
      if (issue.format === 'regex' && issue.message !== wordless) return issue.message
      return formatWords[issue.format] ?? `text of the form ${issue.format}`
    default:
      return issue.message === '' ? 'another form' : issue.message
  }
}

const unitOf = (origin: string): string =>
  origin === 'string' ? 'a length of ' : origin === 'array' ? 'a number of members of ' : ''
