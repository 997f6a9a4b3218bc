import * as z from 'zod/mini'
import { digestOf } from '../../digests.ts'
import { PersonalDigest } from '../../side-kinds.ts'

/** Version 1 of `authority.given`, frozen: the fee for the look was inline. */
export const AuthorityVersion1 = z.strictObject({
  to: z.array(z.enum(['look', 'drive'])).check(z.minLength(1)),
  by: z.strictObject({
    relation: z.enum(['owner', 'named-person', 'fleet-contact', 'driver']),
    name: PersonalDigest,
  }),
  channel: z.enum(['in-person', 'telephone', 'link']),
  lookFeeCents: z.int().check(z.gte(0)),
  lookFeeWaivedWithWork: z.boolean(),
})

export const authorityToVersion2 = ({ lookFeeCents, ...rest }: z.infer<typeof AuthorityVersion1>) => ({
  ...rest,
  money: digestOf({ lookFeeCents }),
})
