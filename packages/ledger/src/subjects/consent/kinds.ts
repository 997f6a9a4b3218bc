import { CautionReference } from '@bayledger/reckoning/cautions/caution-reference'
import { Answer } from '@bayledger/reckoning/estimate'
import * as z from 'zod/mini'
import { CustomerLanguageCode } from '../../customer-language-code.ts'
import { earlierVersion, kind } from '../../kind.ts'
import { deskRoles, moneyRoles, roles } from '../../role.ts'
import { SecondPerson } from '../../second-person.ts'
import { ContactDigest, MoneyDigest, PersonalDigest, ShownDigest } from '../../side-kinds.ts'
import { Day, Digest, Id, Instant, plainText } from '../../text.ts'
import { DecidedBy } from '../opening/kinds.ts'
import {
  DecisionVersion1,
  decisionToVersion2,
  PaymentVersion1,
  PaymentVersion2,
  paymentToVersion2,
  RefusalVersion1,
  RefusalVersion2,
  refusalToVersion2,
} from './decision-version-1.ts'
import { EstimateScope } from './estimate-scope.ts'
import { EstimateVersion1, estimateToVersion2, inlineMoneyOf } from './estimate-version-1.ts'
import { EstimateVersion3, estimateToVersion4 } from './estimate-version-3.ts'
import { EstimateVersion4 } from './estimate-version-4.ts'
import { EstimateVersion5 } from './estimate-version-5.ts'

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
    number: ContactDigest,
    calledAt: Instant,
    answerWords: PersonalDigest,
  }),
])
export type Consent = z.infer<typeof Consent>

export const BundleAnswer = z.strictObject({
  bundleKey: plainText(61),
  answer: Answer,
  deferredUntil: z.nullable(Day),
  /** The cautions that were shown for what was not authorized, as they were worded then. */
  cautionsShown: z.array(CautionReference),
})
export type BundleAnswer = z.infer<typeof BundleAnswer>

const PaidBy = z.enum(['cash', 'card', 'check', 'account', 'none-due'])

const GivenBack = z.strictObject({
  why: PersonalDigest,
  /**
   * The sides of all that was paid and given back by this method until now, oldest first. So what is left is known where
   * this is admitted, and of two who give back at once the second is refused.
   */
  of: z.array(MoneyDigest).check(z.minLength(1), z.maxLength(200)),
})

export const consentKinds = {
  /**
   * Version 3 only says that a reader must know the repair of fasteners; a few of version 2 hold one already. Version 4
   * sells the search for a leak and the repair of a hole apart. Version 5 holds jobs that the customer asks for, and what the
   * advisor adds by hand. Version 6 says of a comeback's lines whether the warranty covers them.
   */
  'estimate.issued': kind(z.strictObject({ diagnosisId: Id, scope: EstimateScope, digest: Digest }), {
    ...server,
    roles: deskRoles,
    sides: ['money'],
    earlier: [
      earlierVersion(EstimateVersion1, estimateToVersion2, inlineMoneyOf),
      earlierVersion(EstimateVersion3, (payload) => payload),
      earlierVersion(EstimateVersion3, estimateToVersion4),
      earlierVersion(EstimateVersion4, (payload) => payload),
      earlierVersion(EstimateVersion5, (payload) => payload),
    ],
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
      /** What was decided on, words and amounts, as it was shown; `null` where a first version did not keep it. */
      shown: z.nullable(ShownDigest),
      language: CustomerLanguageCode,
      agreesToElectronicRecord: z.boolean(),
      wantsRemovedParts: z.boolean(),
    }),
    {
      roles: deskRoles,
      ...server,
      sides: ['personal', 'contact', 'shown'],
      writtenBy: ['staff', 'customer'],
      earlier: [earlierVersion(DecisionVersion1, decisionToVersion2)],
    },
  ),
  'refusal.recorded': kind(
    z.strictObject({
      codes: z.array(plainText(60)).check(z.minLength(1)),
      cautionShown: CautionReference,
      proof: z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('signed'), digest: PersonalDigest }),
        z.strictObject({ kind: z.literal('refused-to-sign'), witness: SecondPerson }),
      ]),
      /** How the vehicle leaves; `null` where an earlier version did not say. */
      leaves: z.nullable(z.enum(['towed', 'sound-spare', 'as-it-is'])),
    }),
    {
      roles: deskRoles,
      ...server,
      sides: ['personal'],
      agreedBy: roles,
      earlier: [
        earlierVersion(RefusalVersion1, refusalToVersion2),
        earlierVersion(RefusalVersion2, (payload) => ({ ...payload, leaves: null })),
      ],
    },
  ),
  'payment.noted': kind(
    z.strictObject({
      /** How much, in a side: `Payment`. */
      money: MoneyDigest,
      method: PaidBy,
      /** Of money that is given back; `null` of money that is received. */
      back: z.nullable(GivenBack),
    }),
    {
      ...server,
      roles: moneyRoles,
      sides: ['personal', 'money'],
      earlier: [
        earlierVersion(PaymentVersion1, paymentToVersion2, ({ amountCents }) => [{ amountCents }]),
        earlierVersion(PaymentVersion2, (payload) => ({ ...payload, back: null })),
      ],
    },
  ),
  /** A payment that was noted wrongly, with what is right; both stay on record. */
  'payment.corrected': kind(
    z.strictObject({
      paymentId: Id,
      /** The side that the payment named until now, so that both sums are known where this is admitted. */
      replaces: MoneyDigest,
      /** What was really received, in a side: `Payment`. */
      money: MoneyDigest,
      method: PaidBy,
      why: PersonalDigest,
    }),
    { ...server, roles: moneyRoles, sides: ['personal', 'money'] },
  ),
}
