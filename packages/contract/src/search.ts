import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id } from './identity.ts'

/**
 * One hit of the desk's search box: what was found, and why it matched. A vehicle comes with its open order if it has one;
 * `waitsFor` is that order's sentence.
 */
export const SearchHit = z.strictObject({
  kind: z.enum(['order', 'vehicle', 'customer']),
  orderId: z.nullable(Id),
  orderNumber: z.nullable(z.string()),
  isOpen: z.boolean(),
  waitsFor: z.nullable(z.string()),
  vehicleId: z.nullable(Id),
  customerId: Id,
  customerName: z.string(),
  vehicleDescription: z.nullable(z.string()),
  plate: z.nullable(z.string()),
  matched: z.enum(['order-number', 'plate', 'vin', 'phone', 'name', 'model', 'sensor-id', 'tin']),
})
export type SearchHit = z.infer<typeof SearchHit>

export const search = endpoint({
  operationId: 'search',
  summary:
    'One box: part of a plate (O as 0, I as 1), the beginning or the end of a VIN, a phone number, a sensor ID or a tire identification number, a name with or without its accents, a model, an order number.',
  method: 'GET',
  path: '/api/search',
  access: { who: 'desk' },
  query: z.strictObject({ q: z.string().check(z.trim(), z.minLength(2), z.maxLength(80)) }),
  replies: { 200: z.strictObject({ hits: z.array(SearchHit).check(z.maxLength(20)) }) },
  problems: [],
})
