import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id } from './identity.ts'

/**
 * What a wake-up names, and no more: the orders that moved with the number of their newest entry, or `all` after a
 * gap, when everything on a screen may be old. `tray`: refused entries came or were settled.
 */
export const Wake = z.strictObject({
  all: z.boolean(),
  orders: z.array(z.strictObject({ orderId: Id, seq: z.int() })),
  tray: z.boolean(),
})
export type Wake = z.infer<typeof Wake>

/**
 * Server-sent events. A `wake` carries a `Wake` as JSON: a client reads the entries after the last one that it has of
 * each named order, and that order's row of the floor. `id` counts up within one process.
 */
export const live = endpoint({
  operationId: 'live',
  summary: 'Events: which orders moved.',
  method: 'GET',
  path: '/api/live',
  access: { who: 'staff' },
  replies: { 200: { contentType: 'text/event-stream' } },
  problems: [],
})
