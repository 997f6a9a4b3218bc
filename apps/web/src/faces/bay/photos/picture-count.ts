import { useSyncExternalStore } from 'react'
import type { PictureContent } from '../../../ledger/picture-sender.ts'
import type { PhotoFault } from './photo-words.ts'

let content: PictureContent = { isRead: false, waiting: [], refused: [] }
let fault: PhotoFault | null = null
const listeners = new Set<() => void>()

/** Tells the screens what of the tablet's photos is not sent. */
export const countPictures = (next: PictureContent): void => {
  content = next
  for (const listener of listeners) listener()
}

/** Why the last photo was not taken; `null` once it was, or once somebody has read so. */
export const tellPhotoFault = (next: PhotoFault | null): void => {
  fault = next
  for (const listener of listeners) listener()
}

const subscribe = (listener: () => void) => {
  listeners.add(listener)
  return () => {
    listeners.delete(listener)
  }
}

export const usePictures = (): PictureContent => useSyncExternalStore(subscribe, () => content)

export const usePhotoFault = (): PhotoFault | null => useSyncExternalStore(subscribe, () => fault)
