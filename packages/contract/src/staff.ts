import { provenKinds } from '@bayledger/ledger/second-person'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Digest, Id, Instant, StaffMember } from './identity.ts'

export const listStaff = endpoint({
  operationId: 'listStaff',
  summary:
    'The people of the shop, for the PIN pad and for a second person; and the names of those who left.',
  method: 'GET',
  path: '/api/staff',
  access: { who: 'device' },
  replies: {
    200: z.strictObject({
      staff: z.array(StaffMember),
      // A reply that a tablet kept from before has none.
      former: z._default(z.array(z.strictObject({ staffId: Id, name: z.string() })), []),
    }),
  },
  problems: [],
})

/** What a second person agrees to; `digest` is that of `agreementOf` or `sheetFigureDigest` in the ledger. */
export const AgreesTo = z.strictObject({
  orderId: Id,
  kind: z.enum(provenKinds),
  entryId: Id,
  digest: Digest,
})

export const proveSecondPerson = endpoint({
  operationId: 'proveSecondPerson',
  summary:
    'A second person types their PIN for one entry, or one figure of a sheet, that somebody else writes. The token is sent with it and is good for it alone, for ten minutes.',
  method: 'POST',
  path: '/api/second-person',
  access: { who: 'staff' },
  body: z.strictObject({
    staffId: Id,
    pin: z.string().check(z.regex(/^\d{6}$/)),
    agreesTo: AgreesTo,
  }),
  triesPerMinute: 60,
  replies: { 201: z.strictObject({ token: z.string(), expiresAt: Instant }) },
  problems: ['PIN_REFUSED', 'SIGN_IN_BLOCKED', 'SECOND_PERSON_REFUSED'],
})
