import { deskRoles } from '@bayledger/ledger/role'
import * as z from 'zod/mini'
import { CustomerContent } from './customers.ts'
import { endpoint } from './endpoint.ts'
import { Id, Instant } from './identity.ts'
import { VehicleContent } from './vehicles.ts'

/** The fields of a customer's card that one of two records keeps. */
export const CustomerField = z.keyof(CustomerContent)
export type CustomerField = z.infer<typeof CustomerField>

/** The fields of a vehicle that one of two records keeps. `customerId`: whose it is. */
export const VehicleField = z.keyof(VehicleContent)
export type VehicleField = z.infer<typeof VehicleField>

/** Two records that were made one. `mayUndo`: no later merge rests on it, and it was not undone. */
export const Merge = z.strictObject({
  mergeId: Id,
  mergedId: Id,
  survivorId: Id,
  mergedName: z.string(),
  survivorName: z.string(),
  taken: z.array(z.string()),
  madeBy: z.string(),
  madeAt: Instant,
  undoneBy: z.nullable(z.string()),
  undoneAt: z.nullable(Instant),
  mayUndo: z.boolean(),
})
export type Merge = z.infer<typeof Merge>

/** The other record with the version that was read, and the fields of which its value is kept. */
const other = { mergedId: Id, mergedVersion: z.int() }
const access = { who: 'desk', roles: deskRoles } as const
const history = { 200: z.strictObject({ merges: z.array(Merge) }) }
const customer = z.strictObject({ customerId: Id })
const vehicle = z.strictObject({ vehicleId: Id })

export const mergeCustomers = endpoint({
  operationId: 'mergeCustomers',
  summary:
    'Make another customer’s record one with this one. Nothing is deleted; `If-Match` names the version of this one that was read.',
  method: 'POST',
  path: '/api/customers/:customerId/merges',
  access,
  ifMatch: true,
  params: customer,
  body: z.strictObject({ ...other, take: z.array(CustomerField) }),
  replies: { 201: Merge },
  problems: ['CUSTOMER_NOT_FOUND', 'RECORD_MERGED', 'MERGE_REFUSED', 'CUSTOMER_ERASED'],
})

export const listCustomerMerges = endpoint({
  operationId: 'listCustomerMerges',
  summary: 'Which records of a customer were made one or taken apart again, by whom and when; newest first.',
  method: 'GET',
  path: '/api/customers/:customerId/merges',
  access,
  params: customer,
  replies: history,
  problems: ['CUSTOMER_NOT_FOUND'],
})

export const mergeVehicles = endpoint({
  operationId: 'mergeVehicles',
  summary: 'Make another vehicle’s record one with this one, as for customers.',
  method: 'POST',
  path: '/api/vehicles/:vehicleId/merges',
  access,
  ifMatch: true,
  params: vehicle,
  body: z.strictObject({ ...other, take: z.array(VehicleField) }),
  replies: { 201: Merge },
  problems: ['VEHICLE_NOT_FOUND', 'RECORD_MERGED', 'MERGE_REFUSED'],
})

export const listVehicleMerges = endpoint({
  operationId: 'listVehicleMerges',
  summary: 'Which records of a vehicle were made one or taken apart again, by whom and when; newest first.',
  method: 'GET',
  path: '/api/vehicles/:vehicleId/merges',
  access,
  params: vehicle,
  replies: history,
  problems: ['VEHICLE_NOT_FOUND'],
})

export const undoMerge = endpoint({
  operationId: 'undoMerge',
  summary:
    'Take two records apart again, each as it was; what was changed since in the surviving one stays there.',
  method: 'POST',
  path: '/api/merges/:mergeId/undo',
  access,
  params: z.strictObject({ mergeId: Id }),
  replies: { 200: Merge },
  problems: ['MERGE_NOT_FOUND', 'MERGE_REFUSED', 'VIN_TAKEN'],
})
