import { createHash } from 'node:crypto'
import { type PhotoStatus, photoPieceCount } from '@bayledger/contract/photos'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import type { Deps } from '../../deps.ts'
import { getLedger, getLedgerFor } from '../orders/service.ts'
import { bytesOfPiece } from './policy.ts'
import { makePrintCopy, makeViewCopy, type ViewCopy } from './service/make-view-copy.ts'
import * as store from './store.ts'

export const getPhotoStatus = async (deps: Deps, digest: string): Promise<PhotoStatus> => {
  const { byteLength, isErased, isReceived } = await namedPhoto(deps, digest)
  if (isErased) return { state: 'erased', byteLength, pieces: [] }
  if (isReceived) return { state: 'received', byteLength, pieces: [] }
  return {
    state: 'wanted',
    byteLength,
    pieces: await store.listPieceNumbers(deps.pool, deps.shopId, digest),
  }
}

/** Keeps one piece. The piece that makes the photo whole has it checked, drawn anew for viewing, and kept. */
export const putPhotoPiece = async (
  deps: Deps,
  digest: string,
  piece: { readonly number: number; readonly bytes: Uint8Array },
): Promise<PhotoStatus> => {
  const { byteLength, isErased, isReceived } = await namedPhoto(deps, digest)
  const wanted = bytesOfPiece(byteLength, piece.number)
  if (piece.bytes.length !== wanted)
    throw new AppError({ code: 'PHOTO_PIECE_WRONG', wanted, sent: piece.bytes.length })
  if (!isErased && !isReceived) {
    const { pool, shopId, clock } = deps
    await store.insertPiece(pool, shopId, { digest, ...piece, at: clock.now() })
    const pieces = await store.listPieceNumbers(pool, shopId, digest)
    if (pieces.length === photoPieceCount(byteLength))
      await takeTurn(() => keepWhole(deps, digest, byteLength))
  }
  return getPhotoStatus(deps, digest)
}

/** One photo at a time is in memory whole, however many arrive at once. */
const takeTurn = async (work: () => Promise<void>): Promise<void> => {
  const mine = turn.then(work)
  turn = mine.catch(() => undefined)
  return mine
}
let turn: Promise<unknown> = Promise.resolve()

const keepWhole = async (deps: Deps, digest: string, byteLength: number): Promise<void> => {
  const { pool, shopId } = deps
  const bytes = await readPieces(deps, digest, byteLength)
  // Another process has put it together meanwhile.
  if (bytes === null) return
  const fault = await storeChecked(deps, digest, bytes)
  if (fault === null) return
  await store.deletePieces(pool, shopId, digest)
  throw new AppError({ code: fault })
}

/** Keeps whole bytes with a copy for viewing; gives why not, where they are not this photo or no photo. */
const storeChecked = async (
  { pool, shopId, clock }: Deps,
  digest: string,
  bytes: Uint8Array,
): Promise<'PHOTO_DAMAGED' | 'PHOTO_UNREADABLE' | null> => {
  if (sha256Of(bytes) !== digest) return 'PHOTO_DAMAGED'
  const view = await makeViewCopy(bytes)
  if (view === null) return 'PHOTO_UNREADABLE'
  await store.storeWhole(pool, shopId, {
    digest,
    bytes,
    mediaType: mediaTypeOf(bytes),
    view: { digest: sha256Of(view.bytes), bytes: view.bytes },
    at: clock.now(),
  })
  return null
}

/** Keeps a photo that came whole; gives whether it is here now, or was erased: not where no entry names it. */
export const keepPhoto = async (deps: Deps, digest: string, bytes: Uint8Array): Promise<boolean> => {
  const named = await store.findNamed(deps.pool, deps.shopId, digest)
  if (named === null || named.isErased || named.isReceived) return named !== null
  let fault: string | null = null
  await takeTurn(async () => {
    fault = await storeChecked(deps, digest, bytes)
  })
  return fault === null
}

const readPieces = async (deps: Deps, digest: string, byteLength: number): Promise<Uint8Array | null> => {
  const pieces: Uint8Array[] = []
  for (let number = 0; number < photoPieceCount(byteLength); number += 1) {
    const bytes = await store.findPiece(deps.pool, deps.shopId, digest, number)
    if (bytes === null) return null
    pieces.push(bytes)
  }
  return Buffer.concat(pieces)
}

/** Which of the three kinds that are taken, by the first byte. */
const mediaTypeOf = (bytes: Uint8Array): string => {
  if (bytes[0] === 0xff) return 'image/jpeg'
  return bytes[0] === 0x89 ? 'image/png' : 'image/webp'
}

export const listOrderPhotos = async (deps: Deps, actor: StaffActor, orderId: string) => {
  const { entries } = await getLedgerFor(deps, actor, orderId)
  const digests = entries.flatMap((entry) => (entry.kind === 'photo.attached' ? [entry.payload.digest] : []))
  return store.listStates(deps.pool, deps.shopId, digests)
}

/** A photo of an order that this person may read, withdrawn ones too. */
export const getOrderPhoto = async (
  deps: Deps,
  actor: StaffActor,
  { orderId, digest }: { readonly orderId: string; readonly digest: string },
): Promise<Uint8Array> => {
  const { entries } = await getLedgerFor(deps, actor, orderId)
  const isOfOrder = entries.some(
    (entry) => entry.kind === 'photo.attached' && entry.payload.digest === digest,
  )
  return isOfOrder ? viewCopy(deps, digest) : refused()
}

/** A photo that the shop shows to the customer of an order. */
export const getSharedPhoto = async (deps: Deps, orderId: string, digest: string): Promise<Uint8Array> => {
  const { state } = await getLedger(deps, orderId)
  const isShared = state.photos.some((photo) => photo.shared && photo.digest === digest)
  return isShared ? viewCopy(deps, digest) : refused()
}

/** Which of these photos can be shown. */
export const listReceived = async (deps: Deps, digests: readonly string[]): Promise<ReadonlySet<string>> =>
  new Set((await store.listStates(deps.pool, deps.shopId, digests)).received)

/** Copies for paper of the photos that have arrived, by digest. */
export const listPrintCopies = async (
  deps: Deps,
  digests: readonly string[],
): Promise<ReadonlyMap<string, ViewCopy>> => {
  const copies = new Map<string, ViewCopy>()
  for (const [digest, view] of await store.findViewCopies(deps.pool, deps.shopId, digests)) {
    const copy = await makePrintCopy(view)
    if (copy !== null) copies.set(digest, copy)
  }
  return copies
}

/** The copy of a photo that is shown; `null` where it has not arrived or was erased. */
export const findViewCopy = async (deps: Deps, digest: string): Promise<Uint8Array | null> =>
  (await store.findViewCopies(deps.pool, deps.shopId, [digest])).get(digest) ?? null

const viewCopy = async (deps: Deps, digest: string): Promise<Uint8Array> =>
  (await findViewCopy(deps, digest)) ?? refused()

const namedPhoto = async (deps: Deps, digest: string): Promise<store.NamedPhoto> =>
  (await store.findNamed(deps.pool, deps.shopId, digest)) ?? refused()

const refused = (): never => {
  throw new AppError({ code: 'PHOTO_NOT_FOUND' })
}

const sha256Of = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')
