import { refuse } from '../../admit/refusal.ts'
import type { Rules } from '../../admit/rule.ts'
import { mostPhotoBytes, type photoKinds } from './kinds.ts'

export const photoRules: Rules<keyof typeof photoKinds> = {
  'photo.attached': [
    (_state, { payload }) =>
      payload.byteLength > mostPhotoBytes ? refuse('PHOTO_TOO_LARGE', { bytes: payload.byteLength }) : null,
  ],
  'photo.shared': [
    (state, { payload }) =>
      state.photos.some(({ written }) => written.entryId === payload.photoId)
        ? null
        : refuse('PHOTO_UNKNOWN', {}),
  ],
}
