import * as z from 'zod/mini'

export const Id = z.uuid()

/** UTC text with milliseconds and Z. */
export const Instant = z.iso.datetime({ precision: 3 })

/** A calendar day, YYYY-MM-DD. */
export const Day = z.iso.date()

/** SHA-256 or HMAC-SHA-256, lower-case hexadecimal. */
export const Digest = z.string().check(z.regex(/^[0-9a-f]{64}$/))

/** Text of a person, trimmed, without control characters. */
export const line = (maximum: number) =>
  z.string().check(z.trim(), z.minLength(1), z.maxLength(maximum), z.regex(/^\P{Cc}*$/u))

/** Where a list goes on: opaque text from the page before. */
export const Cursor = z.string().check(z.minLength(1), z.maxLength(200))

export const Role = z.enum(['advisor', 'technician', 'lead', 'manager', 'owner'])

export const StaffMember = z.strictObject({ staffId: Id, name: z.string(), roles: z.array(Role) })
export type StaffMember = z.infer<typeof StaffMember>

export const Place = z.strictObject({ locationId: Id, name: z.string(), timeZone: z.string() })
export type Place = z.infer<typeof Place>
