import type { PayloadOf } from '@bayledger/ledger/registry'
import { mostPhotoBytes } from '@bayledger/ledger/subjects/photos/kinds'
import type { PhotoFault } from './photo-words.ts'

/** A photo as it is stored and what its entry says of it. */
export type TakenPhoto = {
  readonly bytes: Uint8Array
  readonly facts: Pick<PayloadOf<'photo.attached'>, 'digest' | 'byteLength'> & {
    readonly picture: NonNullable<PayloadOf<'photo.attached'>['picture']>
  }
}

/** The longest side that is kept, in pixels: a stem's thread can be read, and a day's photos fit on a tablet. */
const longestSide = 2_560
const mostPixels = 100_000_000
const quality = 0.85

/**
 * Draws what the camera gave anew, upright and no larger than it has to be. A drawing carries no place, no camera and no
 * time; the time is the tablet's own.
 */
export const takePhoto = async (file: Blob, now: Date): Promise<TakenPhoto | PhotoFault> => {
  if (file.size > mostPhotoBytes) return 'too-large'
  const address = URL.createObjectURL(file)
  const drawn = await drawnAnew(address).finally(() => URL.revokeObjectURL(address))
  if (typeof drawn === 'string') return drawn
  const bytes = new Uint8Array(await drawn.jpeg.arrayBuffer())
  return {
    bytes,
    facts: {
      digest: await sha256Of(bytes),
      byteLength: bytes.length,
      picture: {
        mediaType: 'image/jpeg',
        width: drawn.width,
        height: drawn.height,
        takenAt: now.toISOString(),
      },
    },
  }
}

const drawnAnew = async (
  address: string,
): Promise<{ readonly jpeg: Blob; readonly width: number; readonly height: number } | PhotoFault> => {
  const picture = await loaded(address)
  if (picture === null) return 'unreadable'
  const { naturalWidth, naturalHeight } = picture
  // The size is known before the picture is decoded, which needs four bytes a pixel.
  if (naturalWidth * naturalHeight > mostPixels) return 'too-many-pixels'
  const scale = Math.min(1, longestSide / Math.max(naturalWidth, naturalHeight))
  const width = Math.max(1, Math.round(naturalWidth * scale))
  const height = Math.max(1, Math.round(naturalHeight * scale))
  const jpeg = await picture.decode().then(
    () => drawn(picture, width, height),
    () => null,
  )
  return jpeg === null ? 'unreadable' : { jpeg, width, height }
}

const loaded = (address: string): Promise<HTMLImageElement | null> =>
  new Promise((resolve) => {
    const picture = new Image()
    picture.onload = () => resolve(picture)
    picture.onerror = () => resolve(null)
    picture.src = address
  })

const drawn = (picture: HTMLImageElement, width: number, height: number): Promise<Blob | null> => {
  const canvas = document.createElement('canvas')
  canvas.width = width
  canvas.height = height
  const pen = canvas.getContext('2d')
  if (pen === null) return Promise.resolve(null)
  pen.imageSmoothingQuality = 'high'
  pen.drawImage(picture, 0, 0, width, height)
  return new Promise((resolve) => canvas.toBlob(resolve, 'image/jpeg', quality))
}

const sha256Of = async (bytes: Uint8Array<ArrayBuffer>): Promise<string> =>
  Array.from(new Uint8Array(await crypto.subtle.digest('SHA-256', bytes)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('')
