import type { PhotosWording } from '../photos.ts'

export const photos: PhotosWording = {
  subjects: {
    arrival: 'como llegó',
    damage: 'daño',
    placard: 'etiqueta de la puerta',
    stem: 'válvula',
    sensor: 'sensor',
    inside: 'interior de la llanta',
    light: 'luz de advertencia',
    other: 'para dejar constancia',
    'not-right': 'lo que no está bien',
  },
  vehicle: 'vehículo',
  step: (does) => `paso ${does}`,
  of: (where, what, time) => `Foto: ${where}, ${what}, ${time}`,
  notReceived: 'Todavía no recibida',
  erased: 'Borrada',
  notKnown: 'No se muestra sin la red',
}
