import type { Cell, ReportContent, WheelLine } from '../src/content.ts'

const psi = (value: string): Cell => ({ kind: 'figure', value, unit: 'psi' })
const words = (text: string): Cell => ({ kind: 'words', text })

const wheel = (
  position: WheelLine['position'],
  name: string,
  before: string,
  after: string,
  id: string,
): WheelLine => ({
  position,
  name,
  marked: { severity: 'cause', word: 'Cause' },
  before: psi(before),
  after: psi(after),
  label: psi('33'),
  sensorBefore: words(`answered, ID …${id}`),
  sensorAfter: words(`answered, ID …${id}`),
})

/** A finished order of the demo shop: four tires low from cold and seepage, set, driven, proven. */
export const finishedOrder: ReportContent = {
  language: 'en',
  reportNumber: 'R-2601-1',
  orderNumber: 'T-2601',
  head: { seq: 41, hash: '3f2a91bc04de77aa5c01b6e2f9d8a7c63f2a91bc04de77aa5c01b6e2f9d8a7c6' },
  composedAt: '2026-01-12T14:52:00.000Z',
  composedAtWords: 'Jan 12, 2026, 8:52 AM CST',
  timeZone: 'America/Chicago',
  checkAddress: 'https://desk.tamber.example/check',
  templateVersion: 1,
  supersedes: null,
  pageOne: {
    canDrive: { answer: 'drive-normally', words: 'Yes, drive normally.' },
    shop: {
      name: 'Tamber Street Tire & Wheel',
      lines: ['14 Tamber Street, Brindle Falls', 'Call 555-0142'],
    },
    facts: [
      { label: 'Order', value: words('T-2601') },
      { label: 'Report', value: words('R-2601-1') },
      { label: 'Date', value: words('Jan 12, 2026, 8:52 AM CST') },
      { label: 'Vehicle', value: words('Vantrell Linnet sedan 2019') },
      { label: 'Plate', value: { kind: 'id', text: '8KLM210' } },
      { label: 'VIN, last 6', value: { kind: 'id', text: '0O1I47' } },
      { label: 'Odometer in', value: { kind: 'figure', value: '48,211', unit: 'mi' } },
      { label: 'Odometer out', value: { kind: 'figure', value: '48,226', unit: 'mi' } },
    ],
    told: {
      text: words('The light came on this morning when I left for work. It stayed on the whole way.'),
      entry: 2,
    },
    found: [
      {
        severity: 'cause',
        word: 'Cause of the light',
        sentence:
          'All four tires are low by about 8.6 psi. Cold explains half of it; the rest is slow seepage.',
        proof: {
          figure: { kind: 'figure', value: '24.3', unit: 'psi' },
          says: 'right front tire as received; the door label calls for 33 psi',
        },
        remedy: ['Done about it: set all pressures for the day.'],
        entry: 19,
      },
    ],
    did: [
      'Set all four tires to 35.9 psi for today’s temperature.',
      'Drove 22 minutes; the light was off at the end.',
    ],
    notDone: [{ title: 'Wiper blades, for information', answer: 'Not today, until Mar 1, 2026' }],
    fixed: {
      word: 'Proven',
      words: 'car recognizes all 4 sensors and the light was off at the end of 22 minutes of driving',
    },
    wheels: [
      wheel('LF', 'left front', '24.5', '35.9', '3C10'),
      wheel('RF', 'right front', '24.3', '35.9', '3C11'),
      wheel('RR', 'right rear', '24.6', '35.9', '3C12'),
      wheel('LR', 'left rear', '24.4', '36.0', '3C13'),
      {
        position: 'SP',
        name: 'spare',
        marked: null,
        before: psi('58.0'),
        after: psi('60.0'),
        label: psi('60'),
        sensorBefore: { kind: 'gap', text: 'not checked' },
        sensorAfter: { kind: 'gap', text: 'not checked' },
      },
    ],
    next: [
      'Check all pressures once a month, cold, against the door label.',
      'The tires may read up to 3 psi high while warm; do not let air out.',
    ],
    signatures: [
      { label: 'Customer', name: null },
      { label: 'For the shop', name: 'Ottoline Pask' },
    ],
    signing: 'Signing says that you were given this report, and nothing else.',
    check: 'The code opens https://desk.tamber.example/check. Choose this PDF there.',
  },
  sections: [
    {
      title: 'The vehicle as it came',
      blocks: [
        { kind: 'paragraph', text: 'Present on arrival; nothing had been touched.', entry: 5 },
        {
          kind: 'table',
          caption: 'Pressures and sensors as received',
          columns: [
            { title: 'Wheel', share: 14 },
            { title: 'Gauge', share: 12 },
            { title: 'Sensor', share: 12 },
            { title: 'Stored in vehicle', share: 14 },
          ],
          rows: [
            {
              entry: 7,
              cells: [words('LF'), psi('24.5'), psi('24.1'), { kind: 'good', text: 'stored at LF' }],
            },
            {
              entry: 8,
              cells: [
                words('RF'),
                psi('124.3'),
                psi('9.9'),
                { kind: 'gap', text: 'could not be checked: no connection' },
              ],
            },
          ],
        },
      ],
    },
    {
      title: 'Findings',
      blocks: [
        {
          kind: 'findings',
          findings: [
            {
              severity: 'do-not-drive',
              sentence: 'A test of the bar.',
              reasons: ['gauge LF 10 psi: half the label'],
            },
            {
              severity: 'cause',
              sentence: 'All four are low.',
              reasons: ['gauge LF 24.5 psi: 8.5 under the label'],
            },
            { severity: 'also-found', sentence: 'Something else.', reasons: [] },
            { severity: 'for-information', sentence: 'Good to know.', reasons: [] },
            { severity: 'not-checked', sentence: 'Codes stored in the vehicle.', reasons: [] },
            { severity: 'good-as-measured', sentence: 'Tread on all wheels.', reasons: [] },
          ],
        },
      ],
    },
  ],
}
