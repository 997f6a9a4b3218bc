import { inReadingOrder, readingOrder } from '@bayledger/reckoning/wheels'
import type { ReportWorkWording } from '../../report/work.ts'
import { reportCells } from './cells.ts'

const { notRecorded } = reportCells

export const reportWork: ReportWorkWording = {
  title: 'Work',
  nothing: 'No wheel was taken off and no part was fitted.',
  parts: {
    caption: 'Parts and work, by wheel',
    columns: {
      wheel: 'Wheel',
      part: 'Part, lot, made',
      id: 'New ID',
      kit: 'Service kit',
      torque: 'Stem torque',
      inside: 'Inside of tire',
      leak: 'Leak check',
    },
  },
  noneFitted: 'none fitted',
  kit: ({ number, lot }) => (lot === null ? number : `${number}, lot ${lot}`),
  part: ({ number, lot, made }) => `${number}, lot ${lot ?? notRecorded}, made ${made ?? notRecorded}`,
  tight: 'tight',
  leaks: (where) => (where === null ? 'leaks' : `leaks at the ${where}`),
  broken: (wheel, how) => `The ${wheel} sensor was broken in our hands: ${how}.`,
  byHand: {
    caption: 'Written down by hand',
    columns: { wheel: 'Wheel', step: 'Step', recorded: 'Recorded' },
  },
  vehicle: 'vehicle',
  balance: (left, over) =>
    left.shows === 'no-figure'
      ? 'the machine shows no figure'
      : `${left.inner} ${left.unit} left on the inner side, ${left.outer} ${left.unit} on the outer${
          over === null ? '' : `: over the usual ${over} g a side, after it was balanced again`
        }`,
  tires: ({ arrows, sizes }) =>
    [
      arrows.length === 0
        ? 'no tire has an arrow'
        : `arrow, rolls one way only: ${inReadingOrder(arrows).join(', ')}`,
      ...readingOrder.flatMap((wheel) => (sizes[wheel] ? [`size read on ${wheel}: ${sizes[wheel]}`] : [])),
    ].join('; '),
}
