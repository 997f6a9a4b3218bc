import type { ReportReadingsWording } from '../../report/readings.ts'
import { reportCells } from './cells.ts'
import { listed } from './listed.ts'

const codesStored = 'Codes stored in the vehicle'

export const reportReadings: ReportReadingsWording = {
  titles: { arrival: 'Readings as received', closing: 'Readings as left' },
  noneAfter: 'No sensor was read again after the work.',
  readings: {
    caption: 'Pressures and sensors',
    columns: {
      wheel: 'Wheel',
      gauge: 'Gauge',
      sensor: 'Sensor',
      temperature: 'Sensor temp.',
      battery: 'Battery',
      frequency: 'Frequency',
      answer: 'Answer',
      id: 'ID, last 4',
      stored: 'Stored in vehicle',
    },
  },
  when: {
    caption: 'When, with what and by whom',
    columns: { wheel: 'Wheel', gauge: 'Gauge', gauged: 'Gauged', sensorRead: 'Sensor read' },
  },
  gaugeRead: (code, read) => `${code}, read ${read}`,
  gaugeCorrected:
    'Pressures by gauge are gauge-corrected: what the gauge showed, less what it shows more than the master gauge.',
  asSet: (pressure) => `${pressure}, as set`,
  noAnswer: 'no answer',
  answers: 'answers',
  answersAs: (id) => (id === null ? 'answers, ID not read' : `answers, ID ${id}`),
  battery: { ok: 'ok', low: 'low', 'not-reported': 'not reported' },
  otherFrequency: (found, wanted) => `${found}, not ${wanted}`,
  stored: {
    nothing: 'no, nothing stored',
    none: 'no ID stored',
    id: (id) => `stored ${id}`,
    same: 'yes',
    other: (id) => `no, ${id}`,
  },
  field: (field, why) => `${field} (${why})`,
  notPossible: (fields) => `Could not be checked: ${listed(fields)}.`,
  code: ({ text, class: group, wheel }) =>
    `${text === null ? '' : `${text} `}(${group}${wheel === null ? '' : `, ${wheel}`})`,
  codes: (codes) => `${codesStored}: ${codes.length === 0 ? 'none' : listed(codes)}.`,
  codesNotChecked: `${codesStored}: ${reportCells.notChecked}.`,
  codesUnreadable: (why) =>
    `${codesStored}: ${reportCells.couldNotBeChecked}${why === null ? '' : `: ${why}`}.`,
  labelNotVerified: (pressure) => `${pressure}, not verified`,
}
