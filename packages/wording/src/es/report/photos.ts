import type { ReportPhotosWording } from '../../report/photos.ts'

export const reportPhotos: ReportPhotosWording = {
  title: 'Fotos',
  none: 'En esta orden no se tomó ninguna foto.',
  photos: {
    caption: 'Fotos de esta orden',
    columns: { of: 'De', taken: 'Tomada', digest: 'Huella del archivo', file: 'Archivo' },
  },
  received: 'recibido',
  notReceived: 'no recibido',
  caption: (entry, of, taken) => `Anotación ${entry}: ${of}. Tomada ${taken}.`,
  onlySome: (count) => `Aquí se imprimen solo ${count} fotos. El taller las guarda todas.`,
}
