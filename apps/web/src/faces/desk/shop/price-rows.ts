import type { Fee } from '@bayledger/reckoning/money/fees'
import {
  type Discount,
  mostItems,
  type PriceBookContent,
  type Season,
} from '@bayledger/reckoning/money/price-book'
import type { SoldItem } from '@bayledger/reckoning/money/sold-items'
import { bookFaults } from '../../../lib/fault-words.ts'
import { figureIn, type RecordRow, severalIn, textIn } from '../../../ui/record/record-rows.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import { centsIn, dollarsRow, dollarText, percentRow, percentText, thousandthsIn } from './money-rows.ts'
import { filledIn, listRows, slotsOf } from './price-slots.ts'

const hoursRow = (
  key: string,
  label: string,
  given: { part?: string; optional?: string } = {},
): RecordRow => ({
  kind: 'number',
  key: `hours.${key}`,
  label,
  unit: 'h',
  low: 0,
  high: 100,
  decimals: 1,
  hint: 'In tenths of an hour.',
  ...given,
})

type PriceKey = keyof PriceBookContent['prices']
const prices: readonly (readonly [PriceKey, string, string?])[] = [
  ['wheelService', 'Demount, mount and balance a wheel', 'Works at a price'],
  ['wheelServiceLowProfile', 'The same for a low-profile tire'],
  ['repairLabor', 'Find a leak and look inside'],
  ['punctureLabor', 'Repair one hole'],
  ['fastenerLabor', 'Renew one stud, nut or bolt, the work'],
  ['sensorSnapIn', 'Sensor, snap-in', 'Parts'],
  ['sensorClampIn', 'Sensor, clamp-in'],
  ['sensorHighBand', 'Sensor, 2.4 GHz'],
  ['kitSnapIn', 'Service kit or rubber stem'],
  ['kitClampIn', 'Service kit, clamp-in'],
  ['repairUnit', 'Plug-patch unit'],
  ['fastener', 'One stud with its nut, or one bolt'],
  ['tire', 'Tire'],
  ['sensorDisposal', 'Disposal of an old sensor', 'Fees'],
  ['tireDisposal', 'Disposal of an old tire'],
]
/** What a shop may leave out: then no estimate offers it. */
const leftOut: ReadonlySet<string> = new Set([
  'punctureLabor',
  'fastenerLabor',
  'fastener',
  'tire',
  'tireDisposal',
])

/** Works that a customer asks for. Zero hours: the line says that there is no charge. */
const askedHours = [
  ['rotation', 'Rotate the tires'],
  ['season', 'Change to the other season’s wheels'],
  ['torqueAgain', 'Check the torque again after some miles'],
  ['spare', 'Spare: new stem, pressure'],
  ['pressures', 'Set all pressures'],
] as const satisfies readonly (readonly [keyof PriceBookContent['hours'], string])[]

const lowProfileRow: RecordRow = {
  kind: 'number',
  key: 'lowProfileAspect',
  label: 'Low profile up to an aspect of',
  unit: '%',
  low: 20,
  high: 80,
  hint: 'The second figure of a size: 205/45R17 has 45.',
}

const taxClasses = [
  { value: 'parts', label: 'parts' },
  { value: 'labor', label: 'labor' },
  { value: 'tire', label: 'tires' },
  { value: 'fee', label: 'fees' },
] as const

const givers = [
  ['advisor', 'an advisor'],
  ['lead', 'a lead technician'],
  ['manager', 'a manager'],
  ['owner', 'an owner'],
] as const

/** The rows of the price book; fees, discounts and seasons have one empty place after those that are filled in. */
export const priceRows = (values: RowValues): readonly RecordRow[] => [
  { ...dollarsRow('laborCentsPerHour', 'Labor for an hour'), part: 'Labor by the hour' },
  hoursRow('look', 'The inspection'),
  hoursRow('relearnFirst', 'Program and relearn, first sensor'),
  hoursRow('relearnEachMore', 'Each more sensor'),
  hoursRow('reset', 'Reset of a vehicle without sensors'),
  ...askedHours.map(([key, label]) => hoursRow(key, label, { optional: 'not sold here' })),
  ...prices.flatMap(([key, label, part]) => [
    dollarsRow(`prices.${key}`, label, {
      ...(leftOut.has(key) ? { optional: 'not sold here' } : {}),
      ...(part === undefined ? {} : { part }),
    }),
    ...(key === 'wheelServiceLowProfile' ? [lowProfileRow] : []),
  ]),
  percentRow('supplies.percentThousandths', 'Supplies, share of the labor', { high: 50 }),
  dollarsRow('supplies.capCents', 'Supplies, at most'),
  ...listRows(values, 'fees', 'fee', 12, (at) => [
    {
      kind: 'choice',
      key: `${at}.per`,
      label: 'For each',
      options: [
        { value: 'tire', label: 'tire' },
        { value: 'sensor', label: 'sensor' },
        { value: 'wheel', label: 'wheel that is demounted' },
      ],
    },
    dollarsRow(`${at}.cents`, 'Amount'),
    dollarsRow(`${at}.capCents`, 'At most in one decision', { optional: 'no cap' }),
    {
      kind: 'choice',
      key: `${at}.taxClass`,
      label: 'Taxed as',
      options: [
        { value: 'fee', label: 'a fee' },
        { value: 'tire', label: 'a tire' },
        { value: 'none', label: 'nothing' },
      ],
    },
  ]),
  percentRow('taxRatePercentThousandths', 'Sales tax', { part: 'Tax' }),
  { kind: 'several', key: 'taxedClasses', label: 'Tax is on', noneWord: 'nothing', options: taxClasses },
  {
    kind: 'choice',
    key: 'taxBasis',
    label: 'Tax is rounded',
    options: [
      { value: 'line', label: 'on each line' },
      { value: 'invoice', label: 'on the sum' },
    ],
  },
  ...givers.map(([role, label], index) =>
    percentRow(`discountLimits.${role}`, `Off at most by ${label}`, index === 0 ? { part: 'Discounts' } : {}),
  ),
  ...listRows(values, 'discounts', 'discount', 12, (at) => [
    percentRow(`${at}.percentThousandths`, 'Off labor, parts and tires'),
    dollarsRow(`${at}.capCents`, 'At most in one decision', { optional: 'no cap' }),
  ]),
  ...listRows(values, 'items', 'item sold by hand', mostItems, (at) => itemRows(values, at)),
  ...listRows(values, 'seasons', 'season', 8, (at) => [
    dayRow(`${at}.from`, 'From'),
    dayRow(`${at}.to`, 'To, this day too'),
    {
      kind: 'several',
      key: `${at}.classes`,
      label: 'Other prices for',
      noneWord: 'nothing',
      options: taxClasses.filter(({ value }) => value !== 'fee'),
    },
    percentRow(`${at}.percentThousandths`, 'Higher by (lower with a minus)', { low: -50 }),
  ]),
]

const itemKinds = [
  { value: 'tire', label: 'tire' },
  { value: 'part', label: 'part' },
  { value: 'labor', label: 'work of ours' },
  { value: 'outside', label: 'work of another shop' },
  { value: 'fee', label: 'fee' },
] as const

const itemRows = (values: RowValues, at: string): RecordRow[] => [
  { kind: 'choice', key: `${at}.kind`, label: 'Is a', options: itemKinds },
  ...(values[`${at}.kind`] === 'tire'
    ? [
        {
          kind: 'text',
          key: `${at}.size`,
          label: 'Size',
          most: 40,
          hint: 'As its sidewall prints it: 225/65R17 102H.',
        } as const,
      ]
    : []),
  dollarsRow(`${at}.cents`, 'Price of one'),
  ...(values[`${at}.kind`] === 'part'
    ? [dollarsRow(`${at}.depositCents`, 'Deposit until the old part is here', { optional: 'none' })]
    : []),
]

const dayRow = (key: string, label: string): RecordRow => ({
  kind: 'text',
  key,
  label,
  exact: true,
  hint: 'Month and day, as 11-15.',
  fault: (typed) =>
    /^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/.test(typed) ? undefined : bookFaults.dayOfYear,
})

export const priceValues = (book: PriceBookContent): RowValues => ({
  laborCentsPerHour: dollarText(book.laborCentsPerHour),
  ...mapped(book.hours, 'hours', (hundredths) => (hundredths === null ? '' : String(hundredths / 100))),
  ...mapped(book.prices, 'prices', dollarText),
  lowProfileAspect: String(book.lowProfileAspect),
  'supplies.percentThousandths': percentText(book.supplies.percentThousandths),
  'supplies.capCents': dollarText(book.supplies.capCents),
  taxRatePercentThousandths: percentText(book.taxRatePercentThousandths),
  taxedClasses: book.taxedClasses.join(','),
  taxBasis: book.taxBasis,
  ...mapped(book.discountLimits, 'discountLimits', percentText),
  ...slotsOf('fees', book.fees, ({ cents, capCents, ...fee }) => ({
    ...fee,
    cents: dollarText(cents),
    capCents: dollarText(capCents),
  })),
  ...slotsOf('discounts', book.discounts, ({ key, words, percentThousandths, capCents }) => ({
    key,
    words,
    percentThousandths: percentText(percentThousandths),
    capCents: dollarText(capCents),
  })),
  ...slotsOf('items', book.items, ({ size, cents, depositCents, ...item }) => ({
    ...item,
    size: size ?? '',
    cents: dollarText(cents),
    depositCents: dollarText(depositCents),
  })),
  ...slotsOf('seasons', book.seasons, ({ classes, percentThousandths, ...season }) => ({
    ...season,
    classes: classes.join(','),
    percentThousandths: percentText(percentThousandths),
  })),
})

const mapped = <Value>(
  record: Readonly<Record<string, Value>>,
  path: string,
  textOf: (value: Value) => string,
): RowValues =>
  Object.fromEntries(Object.entries(record).map(([key, value]) => [`${path}.${key}`, textOf(value)]))

export const priceContent = (values: RowValues): PriceBookContent => {
  const tenths = (key: string) => Math.round((figureIn(values, `hours.${key}`) ?? 0) * 100)
  const maybeTenths = (key: string) => (textIn(values, `hours.${key}`) === '' ? null : tenths(key))
  const maybe = (key: PriceKey) => centsIn(values, `prices.${key}`)
  const price = (key: PriceKey) => maybe(key) ?? 0
  const limit = (role: string) => thousandthsIn(values, `discountLimits.${role}`)
  return {
    taxRatePercentThousandths: thousandthsIn(values, 'taxRatePercentThousandths'),
    taxedClasses: severalIn(values, 'taxedClasses') as PriceBookContent['taxedClasses'],
    taxBasis: textIn(values, 'taxBasis') === 'invoice' ? 'invoice' : 'line',
    laborCentsPerHour: centsIn(values, 'laborCentsPerHour') ?? 0,
    hours: {
      look: tenths('look'),
      relearnFirst: tenths('relearnFirst'),
      relearnEachMore: tenths('relearnEachMore'),
      reset: tenths('reset'),
      rotation: maybeTenths('rotation'),
      season: maybeTenths('season'),
      torqueAgain: maybeTenths('torqueAgain'),
      spare: maybeTenths('spare'),
      pressures: maybeTenths('pressures'),
    },
    lowProfileAspect: figureIn(values, 'lowProfileAspect') ?? 0,
    prices: {
      wheelService: price('wheelService'),
      wheelServiceLowProfile: price('wheelServiceLowProfile'),
      repairLabor: price('repairLabor'),
      sensorSnapIn: price('sensorSnapIn'),
      sensorClampIn: price('sensorClampIn'),
      sensorHighBand: price('sensorHighBand'),
      kitSnapIn: price('kitSnapIn'),
      kitClampIn: price('kitClampIn'),
      repairUnit: price('repairUnit'),
      sensorDisposal: price('sensorDisposal'),
      punctureLabor: maybe('punctureLabor'),
      tire: maybe('tire'),
      tireDisposal: maybe('tireDisposal'),
      fastener: maybe('fastener'),
      fastenerLabor: maybe('fastenerLabor'),
    },
    supplies: {
      percentThousandths: thousandthsIn(values, 'supplies.percentThousandths'),
      capCents: centsIn(values, 'supplies.capCents') ?? 0,
    },
    fees: filledIn(values, 'fees', 12).map(
      ({ at, key, words }): Fee => ({
        key,
        words,
        per: textIn(values, `${at}.per`) as Fee['per'],
        cents: centsIn(values, `${at}.cents`) ?? 0,
        capCents: centsIn(values, `${at}.capCents`),
        taxClass: textIn(values, `${at}.taxClass`) as Fee['taxClass'],
      }),
    ),
    discounts: filledIn(values, 'discounts', 12).map(
      ({ at, key, words }): Discount => ({
        key,
        words,
        percentThousandths: thousandthsIn(values, `${at}.percentThousandths`),
        capCents: centsIn(values, `${at}.capCents`),
      }),
    ),
    discountLimits: {
      advisor: limit('advisor'),
      lead: limit('lead'),
      manager: limit('manager'),
      owner: limit('owner'),
    },
    items: filledIn(values, 'items', mostItems).map(({ at, key, words }): SoldItem => {
      const kind = textIn(values, `${at}.kind`) as SoldItem['kind']
      return {
        key,
        words,
        kind,
        size: kind === 'tire' ? textIn(values, `${at}.size`) : null,
        cents: centsIn(values, `${at}.cents`) ?? 0,
        depositCents: kind === 'part' ? centsIn(values, `${at}.depositCents`) : null,
      }
    }),
    seasons: filledIn(values, 'seasons', 8).map(
      ({ at, key, words }): Season => ({
        key,
        words,
        from: textIn(values, `${at}.from`),
        to: textIn(values, `${at}.to`),
        classes: severalIn(values, `${at}.classes`) as Season['classes'],
        percentThousandths: thousandthsIn(values, `${at}.percentThousandths`),
      }),
    ),
  }
}
