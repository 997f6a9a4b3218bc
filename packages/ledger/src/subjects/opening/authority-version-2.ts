import * as z from 'zod/mini'
import { MoneyDigest, PersonalDigest } from '../../side-kinds.ts'

/** Version 2 of `authority.given`, frozen: it did not distinguish a fee that is waived from one that work waives. */
export const AuthorityVersion2 = z.strictObject({
  to: z.array(z.enum(['look', 'drive'])).check(z.minLength(1)),
  by: z.strictObject({
    relation: z.enum(['owner', 'named-person', 'fleet-contact', 'driver']),
    name: PersonalDigest,
  }),
  channel: z.enum(['in-person', 'telephone', 'link']),
  money: MoneyDigest,
  lookFeeWaivedWithWork: z.boolean(),
})

/** A fee of zero was written for one that was waived, so the terms that name work lose nothing. */
export const authorityToVersion3 = ({
  lookFeeWaivedWithWork,
  ...rest
}: z.infer<typeof AuthorityVersion2>) => ({
  ...rest,
  lookFee: lookFeeWaivedWithWork ? ('waived-with-work' as const) : ('charged' as const),
})
