import type { IllFormed } from './well-formed.ts'

const countedAs = (origin: string): string => (origin === 'number' || origin === 'int' ? '' : 'length ')

/**
 * What is said of a draft that cannot be read: what was found in a field, and what is allowed there. It is a refusal of
 * what was just sent, and nothing stores it.
 */
export const draftWords = {
  knownKind: 'a kind of entry that this server knows',
  atMostVersion: (present: number): string => `${present} or older`,
  unknownField: { found: 'an unknown field', allowed: 'no such field; check its spelling' },
  nothing: 'nothing',
  value: 'a value',
  oneOf: (values: readonly string[]): string => `one of ${values.join(', ')}`,
  atLeast: (origin: string, minimum: number | bigint): string => `${countedAs(origin)}${minimum} or more`,
  atMost: (origin: string, maximum: number | bigint): string => `${countedAs(origin)}${maximum} or less`,
  form: (format: string): string => `text of the form ${format}`,
  anotherForm: 'another form',
  plainText: 'text without control characters',
  hasYear: 'a year from 0001 to 9999',
} as const

/** What is said of a text that could not be stored and read back as it is. */
export const illFormedWords: Readonly<
  Record<IllFormed['why'], { readonly found: string; readonly allowed: string }>
> = {
  nul: { found: 'a NUL character', allowed: 'text of whole characters, without NUL' },
  'half-a-character': { found: 'half of a character', allowed: 'text of whole characters, without NUL' },
  'too-deep': { found: 'more levels than that', allowed: 'lists and objects up to 40 levels deep' },
}
