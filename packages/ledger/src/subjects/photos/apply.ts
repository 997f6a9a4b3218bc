import { type Appliers, recorded } from '../../fold/foldable.ts'
import type { photoKinds } from './kinds.ts'

export const applyPhotos: Appliers<keyof typeof photoKinds> = {
  'photo.attached': (state, entry) => ({
    ...state,
    photos: [...state.photos, recorded({ ...entry.payload, shared: false }, entry)],
  }),
  'photo.shared': (state, { payload }) => ({
    ...state,
    photos: state.photos.map((photo) =>
      photo.written.entryId === payload.photoId ? { ...photo, shared: payload.shared } : photo,
    ),
  }),
}
