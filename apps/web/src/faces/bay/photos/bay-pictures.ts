import { getPhotoStatus, type PhotoStatus, photoPieceBytes, putPhotoPiece } from '@bayledger/contract/photos'
import { indexedDbPictures } from '../../../ledger/indexed-db-pictures.ts'
import type { PictureAnswer } from '../../../ledger/picture.ts'
import { makePictureSender } from '../../../ledger/picture-sender.ts'
import { call } from '../../../lib/api-client.ts'
import { isCallProblem, problemText } from '../../../lib/problem.ts'
import { bayOutbox } from '../record/bay-outbox.ts'
import { handInPicture } from '../session/hand-in-picture.ts'
import { photoUnread } from './photo-words.ts'
import { countPictures } from './picture-count.ts'

const answerOf = ({ state, pieces }: PhotoStatus): PictureAnswer =>
  state === 'wanted' ? { is: 'wanted', pieces } : { is: 'done' }

const whatWentWrong = (thrown: unknown): PictureAnswer => {
  if (isCallProblem(thrown, 'PHOTO_NOT_FOUND')) return { is: 'not-named' }
  if (isCallProblem(thrown, 'PHOTO_DAMAGED')) return { is: 'damaged' }
  if (isCallProblem(thrown, 'PHOTO_UNREADABLE') || isCallProblem(thrown, 'PHOTO_PIECE_WRONG')) {
    const { title, detail } = problemText(thrown)
    return { is: 'refused', problem: { title, detail } }
  }
  return { is: 'out-of-reach' }
}

/** What this tablet sends of its photos, behind every screen. */
export const bayPictures = makePictureSender({
  store: indexedDbPictures,
  pieceBytes: photoPieceBytes,
  status: (digest) => call(getPhotoStatus, { params: { digest } }).then(answerOf, whatWentWrong),
  putPiece: (digest, number, bytes) =>
    call(putPhotoPiece, {
      params: { digest, piece: String(number) },
      body: new Blob([new Uint8Array(bytes)]),
    }).then(answerOf, whatWentWrong),
  handInSealed: (digest) =>
    handInPicture(digest).then((isTaken): PictureAnswer => {
      return isTaken ? { is: 'done' } : { is: 'refused', problem: photoUnread }
    }, whatWentWrong),
  retryAfter: (milliseconds, retry) => void setTimeout(retry, milliseconds),
  alone: (work) => navigator.locks.request('bayledger.pictures', work),
})

bayPictures.subscribe(() => countPictures(bayPictures.content()))
globalThis.window?.addEventListener('online', () => bayPictures.wake())

/** Digests of the photos that the ledger refused and nobody has read of yet. */
const refusedPhotos = (): ReadonlySet<string> =>
  new Set(
    bayOutbox
      .content()
      .refused.flatMap(({ parcel }) =>
        parcel.entries.flatMap(({ kind, payload }) =>
          kind === 'photo.attached' ? [(payload as { digest: string }).digest] : [],
        ),
      ),
  )

let refused = refusedPhotos()
let waitingParcels = bayOutbox.content().onTop.length
bayOutbox.subscribe(() => {
  const now = refusedPhotos()
  // Whoever reads that an entry was not taken reads the same of its photo: no entry will ever name it.
  for (const digest of refused) if (!now.has(digest)) void bayPictures.forget(digest)
  refused = now
  const { length } = bayOutbox.content().onTop
  if (length !== waitingParcels) bayPictures.wake()
  waitingParcels = length
})
bayPictures.wake()
