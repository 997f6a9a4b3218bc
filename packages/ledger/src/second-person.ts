import * as z from 'zod/mini'
import { Id } from './text.ts'

/** How a second person showed that they agree: their PIN gave them a token for this entry only. */
export const SecondPersonProof = z.discriminatedUnion('how', [
  z.strictObject({ how: z.literal('pin'), token: z.string().check(z.regex(/^[A-Za-z0-9_-]{43}$/)) }),
])

/** A second person in a payload. `proof: null`: only named, as in first versions; no new entry is admitted like that. */
export const SecondPerson = z.strictObject({ staffId: Id, proof: z.nullable(SecondPersonProof) })
export type SecondPerson = z.infer<typeof SecondPerson>

/** The kinds of entry that may name a second person. */
export const agreedKinds = ['entry.struck', 'order.handed_back', 'refusal.recorded'] as const
export type AgreedKind = (typeof agreedKinds)[number]

/** A second person before they have shown that they agree. */
export const namedOnly = (staffId: string): SecondPerson => ({ staffId, proof: null })
