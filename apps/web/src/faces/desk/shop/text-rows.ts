import type { TextsContent } from '@bayledger/contract/texts'
import { textFaults } from '../../../lib/fault-words.ts'
import { figureIn, type RecordRow, textIn } from '../../../ui/record/record-rows.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import { messageContent, messageRows, messageValues } from './message-rows.ts'

const linesOf = (typed: string): string[] =>
  typed
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')

const headFault = (typed: string): string | undefined => {
  const lines = linesOf(typed)
  return lines.length > 4 || lines.some((line) => line.length > 80) ? textFaults.head : undefined
}

const quietHours = /^([01]\d|2[0-3]):[0-5]\d-([01]\d|2[0-3]):[0-5]\d$/

/** The rows of the shop's own texts. `shop` and `telephone` are for messages as they go out. */
export const textRows = (shop: string, telephone: string | null): readonly RecordRow[] => [
  {
    kind: 'text',
    key: 'lines',
    label: 'Under the shop’s name',
    hint: 'Up to four lines, printed at the head of each report: the address, for one.',
    lines: 3,
    most: 330,
    optional: 'nothing',
    fault: headFault,
    part: 'Report',
  },
  {
    kind: 'text',
    key: 'telephone',
    label: 'Telephone',
    hint: 'In international form, as +15555550100. Reports and the customer’s page name it.',
    exact: true,
    optional: 'none',
    fault: (typed) => (/^\+[1-9]\d{6,14}$/.test(typed) ? undefined : textFaults.telephone),
  },
  {
    kind: 'text',
    key: 'cautions',
    label: 'What the shop adds to the cautions',
    hint: 'The program’s own cautions stay as they are; this is printed as the shop’s words.',
    lines: 3,
    most: 600,
    optional: 'nothing',
  },
  {
    kind: 'text',
    key: 'reportFooter',
    label: 'At the end of each report',
    lines: 3,
    most: 600,
    optional: 'nothing',
  },
  ...messageRows(shop, telephone),
  {
    kind: 'text',
    key: 'quietHours',
    label: 'No messages between',
    hint: 'As 21:00-08:00, where the place is. Empty: messages go at any hour.',
    exact: true,
    optional: 'none',
    fault: (typed) => (quietHours.test(typed) ? undefined : textFaults.quietHours),
  },
  {
    kind: 'number',
    key: 'warranty.laborMonths',
    label: 'Our work is covered for',
    unit: 'months',
    hint: 'Until you write your own terms these are the program’s: common practice, no source.',
    low: 0,
    high: 120,
    decimals: 0,
    part: 'Warranty',
  },
  {
    kind: 'number',
    key: 'warranty.sensorMonths',
    label: 'A sensor that we fitted is covered for',
    unit: 'months',
    low: 0,
    high: 120,
    decimals: 0,
  },
  {
    kind: 'number',
    key: 'warranty.sensorMiles',
    label: 'And for at most',
    unit: 'mi',
    hint: 'Driven since it was fitted.',
    low: 0,
    high: 500_000,
    decimals: 0,
    optional: 'however many',
  },
]

export const textValues = ({
  lines,
  telephone,
  cautions,
  reportFooter,
  messages,
  quietHours: hours,
  warranty,
}: TextsContent): RowValues => ({
  lines: lines.join('\n'),
  telephone: telephone ?? '',
  cautions: cautions ?? '',
  reportFooter: reportFooter ?? '',
  ...messageValues(messages),
  quietHours: hours ?? '',
  'warranty.laborMonths': String(warranty.laborMonths),
  'warranty.sensorMonths': String(warranty.sensorMonths),
  'warranty.sensorMiles': warranty.sensorMiles === null ? '' : String(warranty.sensorMiles),
})

export const textContent = (values: RowValues): TextsContent => ({
  lines: linesOf(textIn(values, 'lines')),
  telephone: textIn(values, 'telephone') || null,
  cautions: textIn(values, 'cautions') || null,
  reportFooter: textIn(values, 'reportFooter') || null,
  messages: messageContent(values),
  quietHours: textIn(values, 'quietHours') || null,
  warranty: {
    laborMonths: figureIn(values, 'warranty.laborMonths') ?? 0,
    sensorMonths: figureIn(values, 'warranty.sensorMonths') ?? 0,
    sensorMiles: figureIn(values, 'warranty.sensorMiles'),
  },
})
