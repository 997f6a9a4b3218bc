import type { ReportPaperWording } from '../../report/paper.ts'

export const reportPaper: ReportPaperWording = {
  title: (report, order) => `Tire-pressure report ${report}, order ${order}`,
  pageOneBookmark: 'Page one: can I drive it?',
  foot: ({ report, order, page, pages, composedAt, timeZone }) =>
    `Report ${report} · order ${order} · page ${page} of ${pages} · ${composedAt}, times in ${timeZone}`,
  ledgerFoot: (entry, hash) =>
    `Ledger entry ${entry}, ${hash} · small numbers in the margin are entries of this order’s ledger`,
  wheels: {
    wheel: 'Wheel',
    before: 'Before',
    after: 'After',
    label: 'Door label',
    sensorBefore: 'Sensor before',
    sensorAfter: 'Sensor after',
  },
  plan: {
    drawing: 'The vehicle from above, nose up.',
    before: 'before',
    after: 'after',
    noReading: 'no reading',
    wheel: ({ name, mark, before, after, label }) =>
      `${name}: ${mark === null ? '' : `${mark}; `}before ${before}, after ${after}, label ${label}.`,
  },
}
