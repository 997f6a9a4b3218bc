import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id, Instant, line } from './identity.ts'

/** `name`: the customer's, or the order's number. `liftedAt` is `null` while it holds. */
export const LegalHold = z.strictObject({
  holdId: Id,
  subject: z.enum(['customer', 'order']),
  subjectId: Id,
  name: z.string(),
  customerId: Id,
  reason: z.string(),
  placedBy: z.string(),
  placedAt: Instant,
  liftedBy: z.nullable(z.string()),
  liftedAt: z.nullable(Instant),
})
export type LegalHold = z.infer<typeof LegalHold>

const access = { who: 'desk', roles: ['manager', 'owner'] } as const

export const listHolds = endpoint({
  operationId: 'listHolds',
  summary: 'Legal holds, those that hold first, then the newest 100 that were lifted.',
  method: 'GET',
  path: '/api/holds',
  access,
  replies: { 200: z.strictObject({ holds: z.array(LegalHold) }) },
  problems: [],
})

export const placeHold = endpoint({
  operationId: 'placeHold',
  summary: 'Place a legal hold on a customer or an order: until it is lifted, nothing of it is erased.',
  method: 'POST',
  path: '/api/holds',
  access,
  body: z.strictObject({ subject: z.enum(['customer', 'order']), subjectId: Id, reason: line(300) }),
  replies: { 201: LegalHold },
  problems: ['CUSTOMER_NOT_FOUND', 'ORDER_NOT_FOUND', 'CUSTOMER_ERASED', 'HOLD_NOT_CHANGED'],
})

export const liftHold = endpoint({
  operationId: 'liftHold',
  summary: 'Lift a legal hold; it stays in the list with who placed and who lifted it.',
  method: 'POST',
  path: '/api/holds/:holdId/lift',
  access: { who: 'desk', roles: ['owner'], proof: 'recent' },
  params: z.strictObject({ holdId: Id }),
  replies: { 200: LegalHold },
  problems: ['HOLD_NOT_FOUND', 'HOLD_NOT_CHANGED'],
})
