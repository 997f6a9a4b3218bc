import type { ReportArrivalWording } from '../../report/arrival.ts'
import { reportCells } from './cells.ts'
import { counted } from './counted.ts'
import { lightSeen } from './light-seen.ts'
import { listed } from './listed.ts'

const { notChecked } = reportCells

export const reportArrival: ReportArrivalWording = {
  title: 'The vehicle as it came',
  noComplaint: 'The complaint was not recorded.',
  told: (words) => `Told: “${words}”`,
  lightTold: (does) =>
    does === null
      ? 'What the warning light did was not asked or not known.'
      : `The warning light, as told: ${does}.`,
  event: ({ event, wheel, daysAgo }) =>
    `${event}${wheel === null ? '' : `, ${wheel}`}${daysAgo === null ? '' : `, ${counted(daysAgo, 'day')} ago`}`,
  events: (events) =>
    events.length === 0 ? 'No recent event was told.' : `Recent events told: ${listed(events)}.`,
  light: (seen) =>
    seen === null
      ? `The warning light, seen by us: ${notChecked}.`
      : `The warning light, seen by us (${seen.by}, ${seen.moment}): ${lightSeen(seen)}.`,
  around: (of) =>
    of === null
      ? `Outdoor temperature and state of the tires: ${notChecked}.`
      : `Outdoors ${of.outdoor}; tires ${of.tires}${of.tire === null ? '' : `, ${of.tire}`}; altitude ${of.altitude} ft.`,
  damage: {
    caption: 'Tires, stems and wheels, present on arrival',
    columns: {
      wheel: 'Wheel',
      tread: 'Tread',
      stem: 'Stem',
      tire: 'Tire damage',
      fasteners: 'Fasteners',
    },
  },
  prints: {
    caption: 'What the tires themselves say',
    columns: {
      wheel: 'Wheel',
      size: 'Size on the tire',
      bySheet: 'Size by the sheet',
      dateCode: 'Number or date code',
      age: 'Tire age',
    },
  },
  unread: (why) => `not readable: ${why}`,
  years: (count) => counted(count, 'year'),
  damages: listed,
}
