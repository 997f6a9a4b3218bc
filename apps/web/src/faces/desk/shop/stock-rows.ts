import type { StockContent, StockItem } from '@bayledger/contract/stock'
import { partAge } from '@bayledger/reckoning/sensor/part-age'
import { bookFaults, partFaults } from '../../../lib/fault-words.ts'
import { figureIn, type RecordRow, textIn } from '../../../ui/record/record-rows.ts'
import type { RowOption, RowValues } from '../../../ui/rows/rows.ts'
import { centsIn, dollarsRow, dollarText } from './money-rows.ts'

const kinds = [
  { value: 'sensor', label: 'sensor' },
  { value: 'kit', label: 'service kit or stem' },
  { value: 'repair-unit', label: 'repair unit' },
  { value: 'tire', label: 'tire' },
  { value: 'fastener', label: 'stud, nut or bolt' },
  { value: 'supply', label: 'supplies' },
] as const

const torqueRow = (key: string, label: string): RecordRow => ({
  kind: 'number',
  key,
  label,
  unit: 'lbf·in',
  low: 1,
  high: 200,
  decimals: 1,
  optional: 'not known',
  hint: 'From the sensor maker’s sheet, in lbf·in and not in lbf·ft.',
})

const sensorRows: readonly RecordRow[] = [
  {
    kind: 'text',
    key: 'frequenciesMHz',
    label: 'Frequency in MHz',
    optional: 'not known',
    part: 'What it is matched by',
    hint: 'As 433.92, or two with a comma for a dual one: 315, 433.92.',
    fault: (typed) => ((numbersIn(typed) ?? [0, 0, 0]).length > 2 ? bookFaults.frequencies : undefined),
  },
  {
    kind: 'text',
    key: 'protocols',
    label: 'Protocols',
    optional: 'not known',
    hint: 'As on the specification sheets, with commas between.',
  },
  {
    kind: 'number',
    key: 'ratedPsi',
    label: 'Stem holds at most',
    unit: 'psi',
    low: 20,
    high: 200,
    optional: 'not stated',
  },
  {
    kind: 'number',
    key: 'holeMillimeters',
    label: 'Valve hole',
    unit: 'mm',
    low: 5,
    high: 30,
    decimals: 1,
    optional: 'not known',
  },
  torqueRow('nutLbfIn', 'Torque of the nut'),
  torqueRow('screwLbfIn', 'Torque of the screw'),
]

/** Numbers with commas between; `null` where one of them is none. */
const numbersIn = (typed: string): number[] | null => {
  const numbers = listIn(typed).map(Number)
  return numbers.some((one) => !(one > 0)) ? null : numbers
}

const listIn = (typed: string): string[] =>
  typed
    .split(',')
    .map((one) => one.trim())
    .filter((one) => one !== '')

/** The rows of a line of the stock list at one of these places. A sensor has what it is matched by. */
export const stockRows =
  (places: readonly RowOption[]) =>
  (values: RowValues): readonly RecordRow[] => [
    {
      kind: 'text',
      key: 'partNumber',
      label: 'Part number',
      most: 60,
      exact: true,
      hint: 'It stays once it is saved.',
    },
    { kind: 'choice', key: 'locationId', label: 'Place', options: places },
    { kind: 'choice', key: 'kind', label: 'What it is', options: kinds },
    {
      ...{ kind: 'text', key: 'words', label: 'In the shop’s words', most: 120 },
      hint: 'As your people call it: Sensor 315 MHz, metal stem.',
    },
    {
      kind: 'choice',
      key: 'stem',
      label: 'Stem',
      optional: 'none',
      options: [
        { value: 'snap-in', label: 'rubber, snap-in' },
        { value: 'clamp-in', label: 'metal, clamp-in' },
      ],
    },
    ...(values.kind === 'sensor' ? sensorRows : []),
    {
      kind: 'text',
      key: 'madeMonth',
      label: 'Made in',
      exact: true,
      optional: 'not known',
      part: 'The shelf',
      hint: 'Year and month, as 2025-08.',
      fault: (typed) => (/^\d{4}-(0[1-9]|1[0-2])$/.test(typed) ? undefined : partFaults.madeMonth),
    },
    {
      kind: 'number',
      key: 'shelfMonths',
      label: 'Not fitted after',
      unit: 'months',
      low: 1,
      high: 36,
      optional: '24, as usual',
    },
    {
      kind: 'text',
      key: 'heldBack',
      label: 'Held back from fitting because',
      optional: 'it is not held back',
    },
    {
      kind: 'number',
      key: 'minimum',
      label: 'Keep at least',
      unit: '',
      low: 0,
      high: 9_999,
      optional: 'no minimum',
    },
    {
      kind: 'number',
      key: 'leadDays',
      label: 'A delivery takes',
      unit: 'days',
      low: 0,
      high: 365,
      optional: 'not known',
    },
    dollarsRow('coreDepositCents', 'Deposit on the old part', { optional: 'none' }),
    { kind: 'text', key: 'supplier', label: 'Supplier', most: 120, optional: 'none' },
  ]

const text = (value: number | string | null): string => (value === null ? '' : String(value))

export const stockValues = ({
  frequenciesMHz,
  protocols,
  coreDepositCents,
  ...content
}: StockContent): RowValues => ({
  ...Object.fromEntries(Object.entries(content).map(([key, value]) => [key, text(value)])),
  frequenciesMHz: frequenciesMHz.join(', '),
  protocols: protocols.join(', '),
  coreDepositCents: dollarText(coreDepositCents),
})

export const stockContent = (values: RowValues): StockContent => {
  const isSensor = values.kind === 'sensor'
  const maybe = (key: string): string | null => textIn(values, key) || null
  const ofSensor = (key: string): number | null => (isSensor ? figureIn(values, key) : null)
  return {
    partNumber: textIn(values, 'partNumber'),
    locationId: textIn(values, 'locationId'),
    kind: textIn(values, 'kind') as StockContent['kind'],
    words: textIn(values, 'words'),
    frequenciesMHz: isSensor ? (numbersIn(textIn(values, 'frequenciesMHz')) ?? []) : [],
    stem: maybe('stem') as StockContent['stem'],
    holeMillimeters: ofSensor('holeMillimeters'),
    protocols: isSensor ? listIn(textIn(values, 'protocols')) : [],
    ratedPsi: ofSensor('ratedPsi'),
    nutLbfIn: ofSensor('nutLbfIn'),
    screwLbfIn: ofSensor('screwLbfIn'),
    madeMonth: maybe('madeMonth'),
    shelfMonths: figureIn(values, 'shelfMonths'),
    heldBack: maybe('heldBack'),
    minimum: figureIn(values, 'minimum'),
    leadDays: figureIn(values, 'leadDays'),
    coreDepositCents: centsIn(values, 'coreDepositCents'),
    supplier: maybe('supplier'),
  }
}

/** What of a line needs doing, in few words, the most pressing first. */
export const stockNeeds = ({ content, facts }: StockItem, today: string): string[] => {
  const { minimum, madeMonth, shelfMonths, heldBack } = content
  const age = madeMonth === null ? 'fresh' : partAge(madeMonth, today, shelfMonths)
  return [
    ...(facts.onHand < 0 ? ['drawn and never received: count it'] : []),
    ...(minimum !== null && facts.onHand + facts.onTheWay < minimum ? [`under the ${minimum} to keep`] : []),
    ...(facts.onHand > 0 && heldBack === null && age === 'past-shelf-limit' ? ['past its shelf limit'] : []),
    ...(facts.onHand > 0 && age === 'quarantine' ? ['over 36 months old: quarantine'] : []),
    ...(facts.coresOwed > 0
      ? [`${facts.coresOwed} old ${facts.coresOwed === 1 ? 'part' : 'parts'} to give back`]
      : []),
  ]
}

/** The line below its name: how many, what is promised and on its way, and what needs doing. */
export const stockLine = (item: StockItem, today: string): string => {
  const { onHand, onTheWay, promised } = item.facts
  return [
    item.content.words,
    `${onHand} on hand`,
    ...(onTheWay > 0 ? [`${onTheWay} on the way`] : []),
    ...promised.map(({ orderNumber }) => `promised to ${orderNumber}`),
    ...stockNeeds(item, today),
  ].join(' · ')
}
