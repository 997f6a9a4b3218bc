import { TabletSignature } from '@bayledger/ledger/tablet-signature'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Digest, Id } from './identity.ts'

/** How many bytes each piece of a photo has; the last one has what is left. */
export const photoPieceBytes = 256 * 1024

/** How many pieces make a photo of so many bytes. */
export const photoPieceCount = (byteLength: number): number => Math.ceil(byteLength / photoPieceBytes)

/**
 * `wanted`: pieces are missing; `received`: the photo is whole and kept; `erased`: it was erased by law and is not taken
 * again. `pieces`: the numbers of the pieces that are here, from 0.
 */
export const PhotoStatus = z.strictObject({
  state: z.enum(['wanted', 'received', 'erased']),
  byteLength: z.int(),
  pieces: z.array(z.int()),
})
export type PhotoStatus = z.infer<typeof PhotoStatus>

export const getPhotoStatus = endpoint({
  operationId: 'getPhotoStatus',
  summary: 'What of a photo has arrived; an entry has to name the photo first.',
  method: 'GET',
  path: '/api/photos/:digest',
  access: { who: 'device' },
  params: z.strictObject({ digest: Digest }),
  replies: { 200: PhotoStatus },
  problems: ['PHOTO_NOT_FOUND'],
})

export const putPhotoPiece = endpoint({
  operationId: 'putPhotoPiece',
  summary:
    'One piece of a photo, in any order and as often as one likes; with the last one the whole is checked and kept.',
  method: 'PUT',
  path: '/api/photos/:digest/pieces/:piece',
  access: { who: 'device' },
  params: z.strictObject({ digest: Digest, piece: z.string().check(z.regex(/^\d{1,4}$/)) }),
  body: z.instanceof(Uint8Array),
  bodyIs: 'application/octet-stream',
  bodyLimitBytes: photoPieceBytes,
  replies: { 200: PhotoStatus },
  problems: ['PHOTO_NOT_FOUND', 'PHOTO_PIECE_WRONG', 'PHOTO_DAMAGED', 'PHOTO_UNREADABLE'],
})

/** What a tablet seals to the server's key of each photo: the key that opens it, and which tablet signed for it. */
export const BoxedPhoto = z.strictObject({
  deviceId: Id,
  digest: Digest,
  key: z.string(),
  signature: TabletSignature,
})

export const handInSealedPhoto = endpoint({
  operationId: 'handInSealedPhoto',
  summary:
    'Hand in a photo that a tablet sealed and cannot read any more: its key sealed to the server’s, and the sealed bytes in base64. Whoever sends it learns that it was received, and nothing else.',
  method: 'POST',
  path: '/api/sealed-photos',
  access: { who: 'public' },
  body: z.strictObject({
    box: z.string().check(z.regex(/^[A-Za-z0-9+/]{120,4000}={0,2}$/)),
    bytes: z.string().check(z.maxLength(16_000_000), z.regex(/^[A-Za-z0-9+/]+={0,2}$/)),
  }),
  bodyLimitBytes: 16 * 1024 * 1024,
  triesPerMinute: 60,
  replies: { 200: z.strictObject({ received: z.literal(true) }) },
  problems: ['SEALED_PHOTO_NOT_TAKEN'],
})

export const listOrderPhotos = endpoint({
  operationId: 'listOrderPhotos',
  summary: 'The digests of the photos of an order that have arrived, and of those that were erased.',
  method: 'GET',
  path: '/api/orders/:orderId/photos',
  access: { who: 'staff' },
  params: z.strictObject({ orderId: Id }),
  replies: { 200: z.strictObject({ received: z.array(Digest), erased: z.array(Digest) }) },
  problems: ['ORDER_NOT_FOUND', 'ORDER_READ_ONLY', 'ORDER_WITHHELD'],
})

export const getOrderPhoto = endpoint({
  operationId: 'getOrderPhoto',
  summary: 'The view copy of a photo: drawn anew and at most 300 KB. The original is never served.',
  method: 'GET',
  path: '/api/orders/:orderId/photos/:digest',
  access: { who: 'staff' },
  params: z.strictObject({ orderId: Id, digest: Digest }),
  replies: { 200: { contentType: 'image/jpeg' } },
  problems: ['ORDER_NOT_FOUND', 'ORDER_READ_ONLY', 'ORDER_WITHHELD', 'PHOTO_NOT_FOUND'],
})
