import { roles } from '@bayledger/ledger/role'
import { Day, Digest, Id, Instant } from '@bayledger/ledger/text'
import * as z from 'zod/mini'

export { Day, Digest, Id, Instant }

/** Text of a person, trimmed, without control characters and halves of characters. */
export const line = (maximum: number) =>
  z.string().check(z.trim(), z.minLength(1), z.maxLength(maximum), z.regex(/^[^\p{Cc}\p{Cs}]*$/u))

/** Where a list goes on: opaque text from the page before. */
export const Cursor = z.string().check(z.minLength(1), z.maxLength(200))

/** What somebody types to sign in. */
export const SignInName = z
  .string()
  .check(
    z.regex(/^[a-z][a-z0-9.-]{1,30}$/, '2 to 31 small letters, digits, dots and hyphens, a letter first'),
  )

export const Role = z.enum(roles)

export const StaffMember = z.strictObject({ staffId: Id, name: z.string(), roles: z.array(Role) })
export type StaffMember = z.infer<typeof StaffMember>

export const Place = z.strictObject({ locationId: Id, name: z.string(), timeZone: z.string() })
export type Place = z.infer<typeof Place>
