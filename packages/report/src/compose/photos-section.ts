import type { OrderState } from '@bayledger/ledger/state'
import { capitalized } from '@bayledger/wording/capitalized'
import { photoSubject, photoText } from '@bayledger/wording/photos'
import type { Block, Picture, Row, Section } from '../content.ts'
import { paragraph, table } from './blocks.ts'
import { clocksDiffer, moment, type ReportContext, writtenMoment } from './context.ts'
import { gap, words } from './figures.ts'
import type { Spoken } from './spoken.ts'

const says = ({ language }: Spoken) => language.report.photos

/** More than this many photos are listed and not printed, so that the file can still be sent by mail. */
export const mostPictures = 24

type Photo = OrderState['photos'][number]

/** Every photo of the order: when it was taken, the digest of its file, and the picture where it has arrived. */
export const photosSection = (state: OrderState, context: ReportContext): Section => ({
  title: says(context).title,
  blocks:
    state.photos.length === 0
      ? [paragraph(says(context).none)]
      : [photosTable(state, context), ...pictureBlocks(state, context)],
})

const photosTable = (state: OrderState, context: ReportContext): Block =>
  table(
    says(context).photos,
    { of: 34, taken: 26, digest: 22, file: 18 },
    state.photos.map(
      (photo): Row => ({
        entry: photo.written.seq,
        cells: [
          words(ofWords(state, context, photo)),
          words(takenWords(context, photo)),
          { kind: 'id', text: photo.digest.slice(0, 16) },
          context.photosReceived.has(photo.digest)
            ? words(says(context).received)
            : gap(says(context).notReceived),
        ],
      }),
    ),
  )

const pictureBlocks = (state: OrderState, context: ReportContext): Block[] => {
  const shown = state.photos.flatMap((photo): Picture[] => {
    const jpeg = context.pictures.get(photo.digest)
    if (jpeg === undefined) return []
    const taken = takenWords(context, photo)
    return [
      {
        alt: photoText(context.language, photo, state.plan?.plan.steps ?? [], taken),
        caption: says(context).caption(photo.written.seq, ofWords(state, context, photo), taken),
        jpeg,
      },
    ]
  })
  if (shown.length === 0) return []
  const left = shown.length - mostPictures
  return [
    { kind: 'pictures', pictures: shown.slice(0, mostPictures) },
    ...(left > 0 ? [paragraph(says(context).onlySome(mostPictures))] : []),
  ]
}

const ofWords = (state: OrderState, context: Spoken, photo: Photo): string => {
  const what = photoSubject(context.language, photo, state.plan?.plan.steps ?? [])
  return capitalized(photo.wheel ? `${context.language.wheels.names[photo.wheel]}, ${what}` : what)
}

/** By the tablet's clock; with the server's time of receipt where the two differ. */
const takenWords = (context: ReportContext, { picture, written }: Photo): string =>
  picture === null || clocksDiffer(written)
    ? writtenMoment(context, written)
    : moment(context, picture.takenAt)
