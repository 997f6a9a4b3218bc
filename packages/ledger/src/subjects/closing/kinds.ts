import { Distance } from '@bayledger/reckoning/quantity'
import * as z from 'zod/mini'
import { CustomerLanguageCode } from '../../customer-language-code.ts'
import { earlierVersion, kind } from '../../kind.ts'
import { odometerReadOnce } from '../../odometer-read-once.ts'
import { deskRoles, judgeRoles, roles } from '../../role.ts'
import { namedOnly, SecondPerson } from '../../second-person.ts'
import { PersonalDigest } from '../../side-kinds.ts'
import { Digest, Id, plainText } from '../../text.ts'

/** A hand-back without the person who agreed to it. */
const handBack = {
  odometer: z.nullable(Distance),
  lockingKeyReturned: z.nullable(z.boolean()),
  retorqueAdvised: z.boolean(),
  signature: z.nullable(PersonalDigest),
}

/** A withdrawal without its second person. */
const strike = {
  entryId: Id,
  reason: z.enum([
    'undone',
    'wrong-wheel',
    'wrong-value',
    'wrong-order',
    'not-done',
    'recorded-twice',
    'other',
  ]),
  words: z.nullable(PersonalDigest),
}

const final = { writtenWhere: 'server', strikable: 'no' } as const

export const closingKinds = {
  /** Names the head that the report was composed from; refused if the head has moved since. */
  'report.sealed': kind(
    z.strictObject({
      composedFrom: z.strictObject({ seq: z.int().check(z.positive()), hash: Digest }),
      pdfSha256: Digest,
      templateVersion: z.int(),
      settingsVersion: z.int(),
      language: CustomerLanguageCode,
      supersedes: z.nullable(plainText(40)),
    }),
    { ...final, roles: deskRoles },
  ),
  'order.handed_back': kind(
    z.strictObject({
      ...handBack,
      /** For "not yet proven": the second person who agreed to release. */
      releaseAgreedBy: z.nullable(SecondPerson),
      /** The odometer was unlikely, and somebody read it a second time. */
      odometerConfirmed: z.boolean(),
    }),
    {
      ...final,
      sides: ['personal'],
      roles: deskRoles,
      agreedBy: judgeRoles,
      earlier: [
        earlierVersion(z.strictObject({ ...handBack, releaseAgreedBy: z.nullable(Id) }), (payload) => ({
          ...payload,
          releaseAgreedBy: payload.releaseAgreedBy && namedOnly(payload.releaseAgreedBy),
        })),
        earlierVersion(
          z.strictObject({ ...handBack, releaseAgreedBy: z.nullable(SecondPerson) }),
          odometerReadOnce,
        ),
      ],
    },
  ),
  'order.refused': kind(
    z.strictObject({
      reason: z.enum(['unsafe-request', 'would-disable-safety-system', 'out-of-scope']),
      words: PersonalDigest,
    }),
    { ...final, sides: ['personal'], roles: deskRoles },
  ),
  'order.withdrawn': kind(
    z.strictObject({ reason: z.enum(['customer', 'opened-twice', 'other']), words: PersonalDigest }),
    { ...final, sides: ['personal'], roles: deskRoles },
  ),
  /** A person has looked into an entry whose device had the wrong time, and lets the report be sealed. */
  'hold.settled': kind(z.strictObject({ entryId: Id, words: PersonalDigest }), {
    writtenWhere: 'server',
    sides: ['personal'],
    roles: deskRoles,
  }),
  'entry.struck': kind(
    z.strictObject({
      ...strike,
      /** A different person, where striking takes two. */
      secondPerson: z.nullable(SecondPerson),
    }),
    {
      roles,
      agreedBy: judgeRoles,
      strikable: 'no',
      sides: ['personal'],
      earlier: [
        earlierVersion(
          z.strictObject({ ...strike, secondPersonId: z.nullable(Id) }),
          ({ secondPersonId, ...payload }) => ({
            ...payload,
            secondPerson: secondPersonId && namedOnly(secondPersonId),
          }),
        ),
      ],
    },
  ),
}
