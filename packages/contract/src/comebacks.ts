import { ComebackFacts } from '@bayledger/reckoning/money/line-cover'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id } from './identity.ts'

export const getComeback = endpoint({
  operationId: 'getComeback',
  summary:
    'What the warranty of a comeback rests on: when it came, the terms, and what the orders that it is joined to did.',
  method: 'GET',
  path: '/api/orders/:orderId/comeback',
  access: { who: 'desk' },
  params: z.strictObject({ orderId: Id }),
  /** `null`: the order is joined to no earlier one. */
  replies: { 200: z.strictObject({ comeback: z.nullable(ComebackFacts) }) },
  problems: ['ORDER_NOT_FOUND', 'ORDER_READ_ONLY'],
})
