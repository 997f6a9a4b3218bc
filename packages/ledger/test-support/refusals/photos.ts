import { oneSensorJob } from '../one-sensor-job.ts'
import { photo } from '../photo.ts'
import { idOf } from '../seeded-ids.ts'
import { advisor, technician } from '../shop.ts'
import type { Refusals } from './setting.ts'

export const photosRefusals: Refusals<'PHOTO_TOO_LARGE' | 'PHOTO_UNKNOWN'> = {
  PHOTO_TOO_LARGE: [
    [
      'a photo of more than 40 MB',
      () =>
        oneSensorJob('written-up').attempt('photo.attached', photo({ byteLength: 40_000_001 }), {
          by: technician,
        }),
      { bytes: 40_000_001 },
    ],
  ],
  PHOTO_UNKNOWN: [
    [
      'to show the customer a photo that the order does not hold',
      () =>
        oneSensorJob('written-up').attempt(
          'photo.shared',
          { photoId: idOf('other'), shared: true },
          { by: advisor },
        ),
    ],
  ],
}
