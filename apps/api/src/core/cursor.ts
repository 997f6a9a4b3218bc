import { allowedWords } from '../words/field-words.ts'
import { AppError } from './app-error.ts'

/** Where the next page begins, as text that means nothing to a client. */
export const toCursor = (place: readonly string[]): string =>
  Buffer.from(JSON.stringify(place)).toString('base64url')

/** The parts of a cursor of ours; anything else is refused. */
export const fromCursor = (cursor: string | undefined, parts: number): readonly string[] | null => {
  if (cursor === undefined) return null
  const place = read(cursor)
  if (Array.isArray(place) && place.length === parts && place.every((part) => typeof part === 'string'))
    return place
  throw new AppError(
    { code: 'FIELDS_INVALID', what: 'cursor' },
    {
      fields: [{ field: 'cursor', found: cursor.slice(0, 80), allowed: allowedWords.nextCursor }],
    },
  )
}

const read = (cursor: string): unknown => {
  try {
    return JSON.parse(Buffer.from(cursor, 'base64url').toString())
  } catch {
    return null
  }
}
