import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id } from './identity.ts'

/** One hit of the desk's search box: what was found, and why it matched. */
export const SearchHit = z.strictObject({
  kind: z.enum(['order', 'vehicle', 'customer']),
  orderId: z.nullable(Id),
  orderNumber: z.nullable(z.string()),
  vehicleId: z.nullable(Id),
  customerId: Id,
  customerName: z.string(),
  vehicleDescription: z.nullable(z.string()),
  plate: z.nullable(z.string()),
  matched: z.enum(['order-number', 'plate', 'vin', 'phone', 'name', 'sensor-id']),
})
export type SearchHit = z.infer<typeof SearchHit>

export const search = endpoint({
  operationId: 'search',
  summary:
    'One box: plate (O as 0, I as 1), the last of a VIN, the last four of a phone number, a name, an order number, the last of a sensor ID.',
  method: 'GET',
  path: '/api/search',
  access: { who: 'staff' },
  query: z.strictObject({ q: z.string().check(z.trim(), z.minLength(2), z.maxLength(80)) }),
  replies: { 200: z.strictObject({ hits: z.array(SearchHit) }) },
  problems: [],
})
