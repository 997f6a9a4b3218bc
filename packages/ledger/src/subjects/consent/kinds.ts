import { Answer, Cents, Estimate } from '@bayledger/reckoning/estimate'
import * as z from 'zod/mini'
import { earlierVersion, kind } from '../../kind.ts'
import { deskRoles, moneyRoles, roles } from '../../role.ts'
import { namedOnly, SecondPerson } from '../../second-person.ts'
import { PersonalDigest } from '../../side-kinds.ts'
import { Day, Digest, Id, Instant, plainText } from '../../text.ts'
import { DecidedBy } from '../opening/kinds.ts'

const server = { writtenWhere: 'server', strikable: 'no' } as const

/** How consent was given; a signature's strokes or typed name are personal text. */
export const Consent = z.discriminatedUnion('channel', [
  z.strictObject({
    channel: z.literal('in-person'),
    signature: z.strictObject({ form: z.enum(['drawn', 'typed']), digest: PersonalDigest }),
  }),
  z.strictObject({
    channel: z.literal('link'),
    linkId: Id,
    signature: z.strictObject({ form: z.enum(['drawn', 'typed']), digest: PersonalDigest }),
  }),
  z.strictObject({
    channel: z.literal('telephone'),
    number: PersonalDigest,
    calledAt: Instant,
    readOut: PersonalDigest,
    answerWords: PersonalDigest,
  }),
])
export type Consent = z.infer<typeof Consent>

export const BundleAnswer = z.strictObject({
  bundleKey: plainText(61),
  answer: Answer,
  deferredUntil: z.nullable(Day),
  /** The caution, with its version, that was shown for what was not authorized. */
  cautionShown: z.nullable(plainText(20)),
})
export type BundleAnswer = z.infer<typeof BundleAnswer>

/** Everything of a refusal but how it was given. */
const refusal = { codes: z.array(plainText(60)).check(z.minLength(1)), cautionShown: plainText(20) }
const signed = z.strictObject({ kind: z.literal('signed'), digest: PersonalDigest })

export const consentKinds = {
  'estimate.issued': kind(z.strictObject({ diagnosisId: Id, estimate: Estimate, digest: Digest }), {
    ...server,
    roles: deskRoles,
  }),
  'estimate.shown': kind(
    z.strictObject({
      revision: z.int().check(z.positive()),
      channel: z.enum(['in-person', 'link', 'telephone']),
      linkId: z.nullable(Id),
    }),
    { roles: deskRoles, ...server },
  ),
  'estimate.decided': kind(
    z.strictObject({
      revision: z.int().check(z.positive()),
      digest: Digest,
      answers: z.array(BundleAnswer).check(z.minLength(1)),
      by: DecidedBy,
      consent: Consent,
      language: z.enum(['en']),
      agreesToElectronicRecord: z.boolean(),
      wantsRemovedParts: z.boolean(),
    }),
    { roles: deskRoles, ...server, sides: ['personal'], writtenBy: ['staff', 'customer'] },
  ),
  'refusal.recorded': kind(
    z.strictObject({
      ...refusal,
      proof: z.discriminatedUnion('kind', [
        signed,
        z.strictObject({ kind: z.literal('refused-to-sign'), witness: SecondPerson }),
      ]),
    }),
    {
      roles: deskRoles,
      ...server,
      sides: ['personal'],
      agreedBy: roles,
      earlier: [
        earlierVersion(
          z.strictObject({
            ...refusal,
            proof: z.discriminatedUnion('kind', [
              signed,
              z.strictObject({ kind: z.literal('refused-to-sign'), witnessId: Id }),
            ]),
          }),
          ({ proof, ...payload }) => ({
            ...payload,
            proof:
              proof.kind === 'signed' ? proof : { kind: proof.kind, witness: namedOnly(proof.witnessId) },
          }),
        ),
      ],
    },
  ),
  'payment.noted': kind(
    z.strictObject({ amountCents: Cents, method: z.enum(['cash', 'card', 'check', 'account', 'none-due']) }),
    { ...server, roles: moneyRoles },
  ),
}
