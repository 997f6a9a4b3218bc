import { illFormedIn } from '@bayledger/ledger/well-formed'
import * as z from 'zod/mini'
import { allowedWords } from '../words/field-words.ts'
import { AppError } from './app-error.ts'

/** Where the next page begins, as text that means nothing to a client. */
export const toCursor = (place: readonly string[]): string =>
  Buffer.from(JSON.stringify(place)).toString('base64url')

/** What a cursor of ours holds; anything else is refused, also where it only looks like one. */
export const fromCursor = <Place extends z.ZodMiniType>(
  cursor: string | undefined,
  place: Place,
): z.output<Place> | null => {
  if (cursor === undefined) return null
  const found = read(cursor)
  const parsed = z.safeParse(place, found)
  if (parsed.success && illFormedIn(found).length === 0) return parsed.data
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
