import { type Appliers, recorded } from '../../fold/foldable.ts'
import type { photoKinds } from './kinds.ts'

export const applyPhotos: Appliers<keyof typeof photoKinds> = {
  'photo.attached': (state, entry) => ({
    ...state,
    photos: [...state.photos, recorded(entry.payload, entry)],
  }),
}
