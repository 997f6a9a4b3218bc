import { DraftEnvelope } from '@bayledger/ledger/entry'
import { TabletSignature } from '@bayledger/ledger/tablet-signature'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { AppendResult, Heard, mostEntriesAtOnce, SentSide } from './entries.ts'
import { Id } from './identity.ts'

/**
 * Entries that one person wrote on a tablet, as the tablet hands them in, whoever is signed in there now. `signature`: by
 * the tablet's key over `parcelText` of the tablet, the person and the entries.
 */
export const SignedParcel = z.strictObject({
  staffId: Id,
  entries: z.array(DraftEnvelope).check(z.minLength(1), z.maxLength(mostEntriesAtOnce)),
  sides: z.array(SentSide).check(z.maxLength(200)),
  /** Of the order of all these entries. Left out: their writer had heard everything. */
  heard: z.optional(Heard),
  signature: TabletSignature,
})
export type SignedParcel = z.infer<typeof SignedParcel>

export const handInParcel = endpoint({
  operationId: 'handInParcel',
  summary:
    'Append entries that somebody wrote on this tablet, in order, each for itself, under the tablet’s enrollment; the id of each is its idempotency key.',
  method: 'POST',
  path: '/api/bay/parcels',
  access: { who: 'device' },
  body: SignedParcel,
  bodyLimitBytes: 4 * 1024 * 1024,
  replies: { 200: z.strictObject({ results: z.array(AppendResult).check(z.maxLength(mostEntriesAtOnce)) }) },
  problems: ['DEVICE_UNKNOWN', 'SIGNATURE_REFUSED'],
})

/** What a tablet seals to the server's key: the parcel, and which tablet signed it. */
export const BoxedParcel = z.extend(SignedParcel, { deviceId: Id })

export const handInSealedParcel = endpoint({
  operationId: 'handInSealedParcel',
  summary:
    'Hand in what a tablet sealed to the server’s key and cannot read any more. Whoever sends it learns that it was received, and nothing else.',
  method: 'POST',
  path: '/api/sealed-parcels',
  access: { who: 'public' },
  body: z.strictObject({ box: z.string().check(z.regex(/^[A-Za-z0-9+/]{120,1000000}={0,2}$/)) }),
  bodyLimitBytes: 1024 * 1024,
  triesPerMinute: 300,
  replies: { 200: z.strictObject({ received: z.literal(true) }) },
  problems: ['SEALED_PARCEL_NOT_TAKEN'],
})
