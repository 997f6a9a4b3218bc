import type { PhotosWording } from '../photos.ts'

export const photos: PhotosWording = {
  subjects: {
    arrival: 'as it came',
    damage: 'damage',
    placard: 'door label',
    stem: 'stem',
    sensor: 'sensor',
    inside: 'inside of the tire',
    light: 'warning light',
    other: 'for the record',
    'not-right': 'what is not right',
  },
  vehicle: 'the vehicle',
  step: (does) => `step ${does}`,
  of: (where, what, time) => `Photo of ${where}, ${what}, ${time}`,
  notReceived: 'Not received yet',
  erased: 'Erased',
  notKnown: 'Not shown without the network',
}
