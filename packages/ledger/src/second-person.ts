import * as z from 'zod/mini'
import { TabletSignature } from './tablet-signature.ts'
import { Id } from './text.ts'

/** What a second person's PIN earns for one thing that they agree to. */
export const SecondPersonToken = z.string().check(z.regex(/^[A-Za-z0-9_-]{43}$/))

/**
 * How a second person showed that they agree to this entry only: the server gave them a token for their PIN, or the tablet
 * checked their PIN out of the server's reach and signed `agreementText`.
 */
export const SecondPersonProof = z.discriminatedUnion('how', [
  z.strictObject({ how: z.literal('pin'), token: SecondPersonToken }),
  z.strictObject({ how: z.literal('tablet'), deviceId: Id, signature: TabletSignature }),
])
export type SecondPersonProof = z.infer<typeof SecondPersonProof>

/** A second person in a payload. `proof: null`: only named, as in first versions; no new entry is admitted like that. */
export const SecondPerson = z.strictObject({ staffId: Id, proof: z.nullable(SecondPersonProof) })
export type SecondPerson = z.infer<typeof SecondPerson>

/** The kinds of entry that may name a second person. */
export const agreedKinds = [
  'entry.struck',
  'order.handed_back',
  'refusal.recorded',
  'sealant.purged',
  'torque.checked',
] as const
export type AgreedKind = (typeof agreedKinds)[number]

/**
 * Kinds in which the PIN is that of the person who did what the entry says. Whoever writes it may be that person: on a
 * tablet that was left open, being signed in proves nothing. So may whoever verifies a figure of a sheet, which somebody
 * else has entered: saving it holds the two against one another.
 */
export const provenByDoer: ReadonlySet<ProvenKind> = new Set(['torque.checked', 'sheet-figure'])

/** What a PIN can prove: that a person agrees to an entry, or that they have verified a figure of a sheet. */
export const provenKinds = [...agreedKinds, 'sheet-figure'] as const
export type ProvenKind = (typeof provenKinds)[number]

/** A second person before they have shown that they agree. */
export const namedOnly = (staffId: string): SecondPerson => ({ staffId, proof: null })
