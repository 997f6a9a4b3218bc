import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Day, Id } from './identity.ts'

/** The pictures of the owner's page, each of one question. */
export const PictureCode = z.enum([
  'comebacks',
  'comeback-causes',
  'job-minutes',
  'step-minutes',
  'causes',
  'consent',
  'sensor-lots',
  'sensor-ages',
  'promises',
  'ready-error',
])
export type PictureCode = z.infer<typeof PictureCode>

/**
 * One bar. `count` of `of` where it is a share, else just `count`; `minutes` where it is a time: the middle one, and those
 * between which half of them are. `orders`: places in the list of orders.
 */
export const Bar = z.strictObject({
  label: z.string(),
  count: z.int(),
  of: z.nullable(z.int()),
  minutes: z.nullable(z.strictObject({ middle: z.number(), from: z.number(), until: z.number() })),
  orders: z.array(z.int()),
})
export type Bar = z.infer<typeof Bar>

export const Picture = z.strictObject({ code: PictureCode, bars: z.array(Bar) })
export type Picture = z.infer<typeof Picture>

export const getNumbers = endpoint({
  operationId: 'getNumbers',
  summary:
    'What the orders that ended in a range of days tell their owner: comebacks, times, causes, consent, sensors, promises, and what the ready times were worth.',
  method: 'GET',
  path: '/api/numbers',
  access: { who: 'desk', roles: ['manager', 'owner'] },
  query: z.strictObject({
    /** By the place's clock; both days are in it. */
    from: Day,
    until: Day,
    /** All places without one, by the clock of the first. */
    locationId: z.optional(Id),
  }),
  replies: {
    200: z.strictObject({
      /** Newest first. */
      orders: z.array(z.strictObject({ orderId: Id, number: z.string(), endedOn: Day })),
      pictures: z.array(Picture),
      /** How far the ready times were off when the customer had said Yes. */
      readyError: z.strictObject({
        count: z.int(),
        medianMinutes: z.nullable(z.number()),
        within15: z.int(),
      }),
    }),
  },
  problems: ['RECORD_NOT_FOUND'],
})
