import * as z from 'zod/mini'

/**
 * What must be withheld or erased one day is kept beside the payload, in a *side*: the payload carries HMAC-SHA-256 of
 * the side's bytes under a 32-byte salt of its own. `personal`: names, words, signatures. `contact`: how a customer
 * is reached. `money`: prices, lines, totals, payments. `shown`: what a customer decided on, as it was shown.
 */
export const sideKinds = ['personal', 'contact', 'money', 'shown'] as const
export type SideKind = (typeof sideKinds)[number]

/** One schema a kind of side. The schemas are alike and distinguished by identity: each marks where its digest is. */
const marker = () => z.string().check(z.regex(/^[0-9a-f]{64}$/))

export const PersonalDigest = marker()
export const ContactDigest = marker()
export const MoneyDigest = marker()
export const ShownDigest = marker()

export const markers: Readonly<Record<SideKind, z.core.$ZodType>> = {
  personal: PersonalDigest,
  contact: ContactDigest,
  money: MoneyDigest,
  shown: ShownDigest,
}
