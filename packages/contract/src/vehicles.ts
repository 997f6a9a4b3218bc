import { deskRoles } from '@bayledger/ledger/role'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id, line } from './identity.ts'

const content = {
  customerId: Id,
  plate: z.nullable(line(16)),
  plateRegion: z.nullable(line(24)),
  vin: z.nullable(z.string().check(z.trim(), z.minLength(1), z.maxLength(24))),
  description: line(120),
  color: z.nullable(line(40)),
  notes: z.nullable(line(400)),
  sheetId: z.nullable(Id),
}

/** A VIN has 17 characters, without I, O and Q, and a check digit; a refusal says in words what is wrong with it. */
export const VehicleContent = z.strictObject(content)
export type VehicleContent = z.infer<typeof VehicleContent>

/** VIN and notes are `null` on a tablet, which needs neither. */
export const Vehicle = z.strictObject({
  vehicleId: Id,
  version: z.int(),
  ...content,
  description: z.string(),
})
export type Vehicle = z.infer<typeof Vehicle>

const params = z.strictObject({ vehicleId: Id })

export const listVehicles = endpoint({
  operationId: 'listVehicles',
  summary: "A customer's vehicles.",
  method: 'GET',
  path: '/api/vehicles',
  access: { who: 'desk', roles: deskRoles },
  query: z.strictObject({ customerId: Id }),
  replies: { 200: z.strictObject({ vehicles: z.array(Vehicle) }) },
  problems: [],
})

export const createVehicle = endpoint({
  operationId: 'createVehicle',
  summary: 'Add a vehicle.',
  method: 'POST',
  path: '/api/vehicles',
  access: { who: 'desk' },
  once: true,
  body: VehicleContent,
  replies: { 201: Vehicle },
  problems: ['CUSTOMER_NOT_FOUND', 'SHEET_NOT_FOUND', 'VIN_INVALID', 'VIN_TAKEN'],
})

export const getVehicle = endpoint({
  operationId: 'getVehicle',
  summary: 'One vehicle; ETag holds the version too.',
  method: 'GET',
  path: '/api/vehicles/:vehicleId',
  access: { who: 'desk' },
  params,
  replies: { 200: Vehicle },
  problems: ['VEHICLE_NOT_FOUND'],
})

export const putVehicle = endpoint({
  operationId: 'putVehicle',
  summary: 'Save a vehicle; `If-Match` names the version that was read.',
  method: 'PUT',
  path: '/api/vehicles/:vehicleId',
  access: { who: 'desk' },
  ifMatch: true,
  params,
  body: VehicleContent,
  replies: { 200: Vehicle },
  problems: [
    'VEHICLE_NOT_FOUND',
    'CUSTOMER_NOT_FOUND',
    'SHEET_NOT_FOUND',
    'VIN_INVALID',
    'VIN_TAKEN',
    'RECORD_MERGED',
  ],
})
