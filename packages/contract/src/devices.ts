import { PublicKey } from '@bayledger/ledger/tablet-signature'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id, Instant, line, Place } from './identity.ts'

/** The server's time goes along: a tablet that is out of reach counts on from it. */
export const Device = z.strictObject({
  deviceId: Id,
  name: z.string(),
  location: Place,
  /** Whether the server holds the public half of this tablet's key. */
  hasKey: z.boolean(),
  /** The server's public key: what was tapped here is sealed to it as well. */
  sealingKey: PublicKey,
  /** For how many hours after the last contact this tablet opens what it keeps. */
  offlineHours: z.int(),
  /** The people who may sign in here. A version is raised with every change of that person's PIN. */
  pins: z.array(z.strictObject({ staffId: Id, version: z.int() })),
  now: Instant,
})
export type Device = z.infer<typeof Device>

export const createEnrollmentCode = endpoint({
  operationId: 'createEnrollmentCode',
  summary: 'Make a code that lets one tablet in; good once, for ten minutes, shown only now.',
  method: 'POST',
  path: '/api/enrollment-codes',
  access: { who: 'desk', proof: 'recent' },
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
  /** Without a key where the tablet's browser makes none: it then works with the server only. */
  body: z.strictObject({ code: line(20), name: line(40), publicKey: z.optional(PublicKey) }),
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

const unsentCount = z.int().check(z.gte(0), z.lte(1_000_000))

/** What a tablet keeps and has not sent. */
export const Unsent = z.strictObject({ entries: unsentCount, photos: unsentCount })

export const tellUnsent = endpoint({
  operationId: 'tellUnsent',
  summary: 'How much this tablet keeps and has not sent; it says so whenever it has contact.',
  method: 'PUT',
  path: '/api/devices/current/unsent',
  access: { who: 'device' },
  body: Unsent,
  replies: { 204: null },
  problems: ['DEVICE_UNKNOWN'],
})

export const registerDeviceKey = endpoint({
  operationId: 'registerDeviceKey',
  summary:
    'Register the public half of the key that this tablet made; once. For a tablet that was enrolled without one.',
  method: 'POST',
  path: '/api/devices/current/key',
  access: { who: 'staff' },
  body: z.strictObject({ publicKey: PublicKey }),
  triesPerMinute: 20,
  replies: { 200: Device },
  problems: ['DEVICE_UNKNOWN', 'DEVICE_KEY_TAKEN'],
})
