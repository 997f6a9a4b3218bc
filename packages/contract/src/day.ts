import { moneyRoles } from '@bayledger/ledger/role'
import * as z from 'zod/mini'
import { csvReply } from './csv.ts'
import { endpoint } from './endpoint.ts'
import { Day, Id, Instant } from './identity.ts'

const PaidBy = z.enum(['cash', 'card', 'check', 'account', 'none-due'])

/** Money that came in, or under zero went back. A correction takes the earlier sum back and brings the right one. */
export const DayMovement = z.strictObject({
  orderId: Id,
  number: z.string(),
  at: Instant,
  by: z.string(),
  method: PaidBy,
  amountCents: z.nullable(z.int()),
  isCorrection: z.boolean(),
})
export type DayMovement = z.infer<typeof DayMovement>

const query = z.strictObject({ locationId: Id, day: Day })
const access = { who: 'desk', roles: moneyRoles } as const

export const getDay = endpoint({
  operationId: 'getDay',
  summary:
    "A place's day by its own clock: what was paid and given back, and what is still owed or overpaid.",
  method: 'GET',
  path: '/api/day',
  access,
  query,
  replies: {
    200: z.strictObject({
      movements: z.array(DayMovement),
      totals: z.array(z.strictObject({ method: PaidBy, receivedCents: z.int(), returnedCents: z.int() })),
      /** Orders that are open, or ended on that day, and are not settled; what was given back of each may be meant for good. */
      balances: z.array(
        z.strictObject({
          orderId: Id,
          number: z.string(),
          customer: z.string(),
          owedCents: z.int(),
          givenBackCents: z.int(),
        }),
      ),
    }),
  },
  problems: ['RECORD_NOT_FOUND'],
})

export const exportDay = endpoint({
  operationId: 'exportDay',
  summary: "What was paid and given back on a place's day, as CSV.",
  method: 'GET',
  path: '/api/day.csv',
  access,
  query,
  replies: { 200: csvReply },
  problems: ['RECORD_NOT_FOUND'],
})
