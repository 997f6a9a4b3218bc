import * as z from 'zod/mini'

/** Plain words of bounded length; control characters are refused because canonical JSON must stay readable. */
export const plainText = (maximum: number) =>
  z
    .string()
    .check(z.minLength(1), z.maxLength(maximum), z.regex(/^\P{Cc}*$/u, 'text without control characters'))

export const Id = z.uuid()

/** UTC text with milliseconds and Z, as every instant in the ledger. */
export const Instant = z.iso.datetime({ precision: 3 })

/** A calendar day, YYYY-MM-DD. */
export const Day = z.iso.date()

/** SHA-256 or HMAC-SHA-256, lower-case hexadecimal. */
export const Digest = z.string().check(z.regex(/^[0-9a-f]{64}$/))

/**
 * Stands in a payload for personal text (names, customers' words, signatures): HMAC-SHA-256 of the bytes
 * under a salt that is kept apart, so that a lawful erasure leaves every chain whole.
 */
export const PersonalDigest = z.string().check(z.regex(/^[0-9a-f]{64}$/))
