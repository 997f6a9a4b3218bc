import * as z from 'zod/mini'
import { draftWords } from './words.ts'

/**
 * Plain words of bounded length. Control characters are refused because canonical JSON must stay readable, half
 * characters (lone surrogates) because they have no UTF-8 form and would come back as something else.
 */
export const plainText = (maximum: number) =>
  z.string().check(z.minLength(1), z.maxLength(maximum), z.regex(/^[^\p{Cc}\p{Cs}]*$/u, draftWords.plainText))

/**
 * A UUID. Upper case is accepted and lowered here, before anything is hashed or compared, because PostgreSQL returns
 * lower case: an entry that was hashed as sent would not verify when it is read back.
 */
export const Id = z.uuid().check(z.toLowerCase())

/** No calendar has a year 0, and PostgreSQL refuses one. */
const hasYear = z.regex(/^(?!0000)/, draftWords.hasYear)

/** UTC text with milliseconds and Z, as every instant in the ledger. */
export const Instant = z.iso.datetime({ precision: 3 }).check(hasYear)

/** A calendar day, YYYY-MM-DD. */
export const Day = z.iso.date().check(hasYear)

/** SHA-256 or HMAC-SHA-256, lower-case hexadecimal. */
export const Digest = z.string().check(z.regex(/^[0-9a-f]{64}$/))
