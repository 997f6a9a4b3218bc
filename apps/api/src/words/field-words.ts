import type { IllFormed } from '@bayledger/ledger/well-formed'

/** What a field must hold, for whoever sends a request. A person reads it of what was just typed; nothing stores it. */
export const allowedTypes: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
}

export const allowedFormats: Readonly<Record<string, string>> = {
  uuid: 'an id (UUID)',
  datetime: 'an instant in UTC with milliseconds, as 2026-01-12T16:40:00.000Z',
  date: 'a day, as 2026-01-12',
  email: 'an e-mail address',
  regex: 'the form that this field takes',
}

const countedAs = (origin: string): string =>
  origin === 'string' ? 'a length of ' : origin === 'array' ? 'a number of members of ' : ''

export const allowedWords = {
  oneOf: (values: readonly string[]) => `one of ${values.join(', ')}`,
  atLeast: (origin: string, minimum: number | bigint) => `${countedAs(origin)}${minimum} or more`,
  atMost: (origin: string, maximum: number | bigint) => `${countedAs(origin)}${maximum} or less`,
  form: (format: string) => `text of the form ${format}`,
  other: 'another form',
  nextCursor: 'the `next` of the page before, unchanged',
  quotedVersion: 'a whole number in quotation marks, as "3"',
  idempotencyKey: '1 to 100 visible characters, a UUID for one',
  stays: (value: string) => `${value}: it stays as it is once it is saved. Add a new line for another one`,
  unlistedPart: 'a part number that is not on the list of this place yet; edit the line that is there',
  dayFrom: (first: string) => `${first} or a later day`,
  location: 'the id of a place of this shop',
  shop: 'the id of a shop of this service',
  publicKey: 'a public key on the curve P-256, SubjectPublicKeyInfo in base64',
  sideDigest: 'HMAC-SHA-256 of the text under its salt',
} as const

/** What zod says of an issue whose schema has no words of its own. */
export const wordless = 'Invalid input'

export const unknownField = {
  found: 'an unknown field',
  allowed: 'no such field; check its spelling or leave it out',
} as const

export const illFormedWords: Readonly<Record<IllFormed['why'], { found: string; allowed: string }>> = {
  nul: { found: 'a NUL character', allowed: 'text without NUL' },
  'half-a-character': { found: 'half of a character', allowed: 'text of whole characters' },
  'too-deep': { found: 'more than 40 levels', allowed: 'lists and objects up to 40 levels deep' },
}
