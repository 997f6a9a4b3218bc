import type { PayloadOf } from '../src/registry.ts'
import { wordsOf } from './seeded-ids.ts'

/** A photo as a tablet attaches it. */
export const photo = (rest: Partial<PayloadOf<'photo.attached'>> = {}): PayloadOf<'photo.attached'> => ({
  wheel: 'RR',
  stepKey: null,
  subject: 'stem',
  digest: wordsOf('photo'),
  byteLength: 240_000,
  picture: {
    mediaType: 'image/jpeg',
    width: 1_600,
    height: 1_200,
    takenAt: '2026-01-12T15:00:00.000Z',
  },
  ...rest,
})
