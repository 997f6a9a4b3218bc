import { CautionReference } from '@bayledger/reckoning/cautions/caution-reference'
import * as z from 'zod/mini'
import { cautionAsWritten } from '../../caution-as-written.ts'
import { digestOf } from '../../digests.ts'
import { namedOnly, SecondPerson } from '../../second-person.ts'
import { ContactDigest, MoneyDigest, PersonalDigest, ShownDigest } from '../../side-kinds.ts'
import { Day, Digest, Id, Instant, plainText } from '../../text.ts'

/**
 * Version 1 of `estimate.decided`, `refusal.recorded` and `payment.noted`, frozen. Version 1 of a decision did not keep
 * what was shown, save the words that were read out on the telephone; a payment held its amount inline.
 */
const signature = z.strictObject({ form: z.enum(['drawn', 'typed']), digest: PersonalDigest })

const consent = z.discriminatedUnion('channel', [
  z.strictObject({ channel: z.literal('in-person'), signature }),
  z.strictObject({ channel: z.literal('link'), linkId: Id, signature }),
  z.strictObject({
    channel: z.literal('telephone'),
    number: ContactDigest,
    calledAt: Instant,
    readOut: ShownDigest,
    answerWords: PersonalDigest,
  }),
])

export const DecisionVersion1 = z.strictObject({
  revision: z.int().check(z.positive()),
  digest: Digest,
  answers: z
    .array(
      z.strictObject({
        bundleKey: plainText(61),
        answer: z.enum(['authorized', 'declined', 'deferred']),
        deferredUntil: z.nullable(Day),
        cautionShown: z.nullable(plainText(20)),
      }),
    )
    .check(z.minLength(1)),
  by: z.strictObject({
    relation: z.enum(['owner', 'named-person', 'fleet-contact', 'driver']),
    name: PersonalDigest,
  }),
  consent,
  language: z.enum(['en']),
  agreesToElectronicRecord: z.boolean(),
  wantsRemovedParts: z.boolean(),
})

export const decisionToVersion2 = (decision: z.infer<typeof DecisionVersion1>) => {
  const shown = decision.consent.channel === 'telephone' ? decision.consent.readOut : null
  return {
    ...decision,
    answers: decision.answers.map(({ cautionShown, ...answer }) => ({
      ...answer,
      cautionsShown: cautionShown === null ? [] : [cautionAsWritten(cautionShown)],
    })),
    consent: consentToVersion2(decision.consent),
    shown,
  }
}

const consentToVersion2 = (given: z.infer<typeof consent>) => {
  if (given.channel !== 'telephone') return given
  const { readOut: _readOut, ...rest } = given
  return rest
}

export const RefusalVersion1 = z.strictObject({
  codes: z.array(plainText(60)).check(z.minLength(1)),
  cautionShown: plainText(20),
  proof: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('signed'), digest: PersonalDigest }),
    z.strictObject({ kind: z.literal('refused-to-sign'), witnessId: Id }),
  ]),
})

export const RefusalVersion2 = z.strictObject({
  codes: z.array(plainText(60)).check(z.minLength(1)),
  cautionShown: CautionReference,
  proof: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('signed'), digest: PersonalDigest }),
    z.strictObject({ kind: z.literal('refused-to-sign'), witness: SecondPerson }),
  ]),
})

export const refusalToVersion2 = ({ cautionShown, proof, ...rest }: z.infer<typeof RefusalVersion1>) => ({
  ...rest,
  cautionShown: cautionAsWritten(cautionShown),
  proof: proof.kind === 'signed' ? proof : { kind: proof.kind, witness: namedOnly(proof.witnessId) },
})

export const PaymentVersion1 = z.strictObject({
  amountCents: z.int(),
  method: z.enum(['cash', 'card', 'check', 'account', 'none-due']),
})

export const paymentToVersion2 = ({ amountCents, method }: z.infer<typeof PaymentVersion1>) => ({
  method,
  money: digestOf({ amountCents }),
})

/** Version 2 of a payment: an amount under zero was given back, without a reason. */
export const PaymentVersion2 = z.strictObject({
  money: MoneyDigest,
  method: z.enum(['cash', 'card', 'check', 'account', 'none-due']),
})
