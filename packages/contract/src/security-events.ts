import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Day, Id, Instant } from './identity.ts'

/** What happened at the doors of a shop. A kind is never taken out: what was written with it is read for 400 days. */
export const securityEventKinds = [
  'signed-in',
  'sign-in-failed',
  'pin-failed',
  'password-failed',
  'wait-began',
  'signed-out',
  'session-ended',
  'proven-again',
  'person-changed',
  'pin-set',
  'password-set',
  'second-step-on',
  'second-step-off',
  'recovery-code-used',
  'passkey-added',
  'passkey-removed',
  'passkey-failed',
  'passkey-went-back',
  'owner-recovered',
  'access-rules-changed',
  'owner-code-made',
  'owner-code-used',
  'owner-code-failed',
  'tablet-code-made',
  'tablet-let-in',
  'tablet-changed',
  'tablet-put-out',
  'file-exported',
  'data-copied',
  'person-erased',
  'link-withdrawn',
] as const
export type SecurityEventKind = (typeof securityEventKinds)[number]

/**
 * `count`: how many alike came between `firstAt` and `lastAt`, where failures of one person or address are one line. `by`: who did
 * it, `about`: the person or tablet it was done to, both by name.
 */
export const SecurityEventLine = z.strictObject({
  id: Id,
  kind: z.enum(securityEventKinds),
  count: z.int(),
  firstAt: Instant,
  lastAt: Instant,
  by: z.nullable(z.string()),
  about: z.nullable(z.string()),
  tablet: z.nullable(z.string()),
  address: z.nullable(z.string()),
  details: z.record(z.string(), z.unknown()),
})
export type SecurityEventLine = z.infer<typeof SecurityEventLine>

export const listSecurityEvents = endpoint({
  operationId: 'listSecurityEvents',
  summary:
    'Who came in, who failed, whose secrets, roles and sessions changed, what was exported: the newest 500 of a range of days, by the clock of the shop’s first place. Kept for 400 days.',
  method: 'GET',
  path: '/api/security-events',
  access: { who: 'desk', roles: ['owner'] },
  query: z.strictObject({ from: Day, to: Day, staffId: z.optional(Id) }),
  replies: {
    200: z.strictObject({ events: z.array(SecurityEventLine).check(z.maxLength(500)), isWhole: z.boolean() }),
  },
  problems: ['FIELDS_INVALID'],
})
