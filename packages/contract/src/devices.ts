import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id, Instant, line, Place } from './identity.ts'

export const Device = z.strictObject({ deviceId: Id, name: z.string(), location: Place })
export type Device = z.infer<typeof Device>

export const createEnrollmentCode = endpoint({
  operationId: 'createEnrollmentCode',
  summary: 'Make a code that lets one tablet in; good once, for ten minutes, shown only now.',
  method: 'POST',
  path: '/api/enrollment-codes',
  access: { who: 'desk' },
  body: z.strictObject({ locationId: Id }),
  replies: { 201: z.strictObject({ code: z.string(), expiresAt: Instant }) },
  problems: [],
})

export const enrollDevice = endpoint({
  operationId: 'enrollDevice',
  summary: 'Enroll this tablet with a code from the desk.',
  method: 'POST',
  path: '/api/devices',
  access: { who: 'public' },
  body: z.strictObject({ code: line(20), name: line(40) }),
  triesPerMinute: 10,
  replies: { 201: Device },
  problems: ['ENROLLMENT_CODE_REFUSED'],
})

export const getDevice = endpoint({
  operationId: 'getDevice',
  summary: 'Which tablet this is.',
  method: 'GET',
  path: '/api/devices/current',
  access: { who: 'device' },
  replies: { 200: Device },
  problems: ['DEVICE_UNKNOWN'],
})
