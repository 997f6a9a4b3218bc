import type { ReportPhotosWording } from '../../report/photos.ts'

export const reportPhotos: ReportPhotosWording = {
  title: 'Photos',
  none: 'No photo was taken on this order.',
  photos: {
    caption: 'Photos of this order',
    columns: { of: 'Of', taken: 'Taken', digest: 'Digest of the file', file: 'File' },
  },
  received: 'received',
  notReceived: 'not received',
  caption: (entry, of, taken) => `Entry ${entry}: ${of}. Taken ${taken}.`,
  onlySome: (count) => `Only ${count} photos are printed here. The shop keeps all of them.`,
}
