import type { PlaceContent } from '@bayledger/contract/places'
import type { OverrunRule } from '@bayledger/reckoning/money/overrun'
import { hoursFaults } from '../../../lib/fault-words.ts'
import { timeZones } from '../../../lib/time-zones.ts'
import {
  figureIn,
  type RecordRow,
  severalIn,
  textIn,
  yesNo,
  yesNoRow,
} from '../../../ui/record/record-rows.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'

type Hours = PlaceContent['hours'][number]
type Channel = PlaceContent['lawProfile']['consentChannels'][number]

const days = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const

/** "07:30-17:30" as opening hours; `null` for a closed day, `undefined` where it is neither. */
export const hoursFrom = (typed: string): Hours | undefined => {
  if (typed.trim() === '') return null
  const read = /^(\d{1,2}:\d\d)\s*[-–]\s*(\d{1,2}:\d\d)$/.exec(typed.trim())
  if (read === null) return undefined
  const [opens, closes] = [read[1] ?? '', read[2] ?? ''].map((time) => time.padStart(5, '0'))
  return [opens, closes].every((time) => /^([01]\d|2[0-3]):[0-5]\d$/.test(time ?? ''))
    ? { opens: opens ?? '', closes: closes ?? '' }
    : undefined
}

const hoursFault = (typed: string): string | undefined => {
  const hours = hoursFrom(typed)
  if (hours === undefined) return hoursFaults.form
  return hours !== null && hours.opens >= hours.closes ? hoursFaults.order : undefined
}

const overruns = [
  { value: 'none', label: 'nothing: every added cent needs consent' },
  { value: 'percent', label: 'a percentage' },
  { value: 'amount', label: 'an amount' },
  { value: 'greater-of', label: 'the greater of a percentage and an amount' },
  { value: 'lesser-of', label: 'the lesser of a percentage and an amount' },
] as const

const overrunRows = (kind: string): RecordRow[] => [
  ...(['percent', 'greater-of', 'lesser-of'].includes(kind)
    ? [
        {
          kind: 'number',
          key: 'lawProfile.overrun.percentThousandths',
          label: 'Percentage over what was authorized',
          unit: '%',
          low: 0,
          high: 100,
          decimals: 3,
        } as const,
      ]
    : []),
  ...(['amount', 'greater-of', 'lesser-of'].includes(kind)
    ? [dollars('lawProfile.overrun.cents', 'Amount over what was authorized')]
    : []),
  ...(['percent', 'greater-of'].includes(kind)
    ? [dollars('lawProfile.overrun.capCents', 'Never more than', 'no such limit')]
    : []),
]

const dollars = (key: string, label: string, optional?: string): RecordRow => ({
  kind: 'number',
  key,
  label,
  unit: '$',
  low: 0,
  high: 10_000,
  decimals: 2,
  ...(optional === undefined ? {} : { optional }),
})

/** The rows of a place. The law's kind of overrun decides which figures it takes. */
export const placeRows = (values: RowValues): readonly RecordRow[] => [
  { kind: 'text', key: 'name', label: 'Name', most: 80 },
  {
    kind: 'text',
    key: 'address',
    label: 'Address',
    optional: 'none',
    hint: 'As it is printed, in one line.',
  },
  { kind: 'number', key: 'bays', label: 'Bays', unit: '', low: 0, high: 200 },
  {
    kind: 'number',
    key: 'altitudeFeet',
    label: 'Altitude',
    unit: 'ft',
    low: -1_500,
    high: 20_000,
    hint: 'Above sea level. Pressures are corrected with it.',
  },
  {
    kind: 'choice',
    key: 'timeZone',
    label: 'Time zone',
    options: timeZones,
  },
  ...days.map(
    (label, index): RecordRow => ({
      kind: 'text',
      key: `hours.${index}`,
      label,
      optional: 'closed',
      fault: hoursFault,
      ...(index === 0 ? { part: 'Hours', hint: 'As 07:30-17:30.' } : {}),
    }),
  ),
  {
    ...dollars('lawProfile.writtenEstimateAboveCents', 'A written estimate is needed above'),
    part: 'What the law of this place asks for (information, not advice)',
  },
  {
    kind: 'choice',
    key: 'lawProfile.overrun.kind',
    label: 'How far a bill may go over what was authorized',
    options: overruns,
  },
  ...overrunRows(values['lawProfile.overrun.kind'] ?? ''),
  {
    kind: 'several',
    key: 'lawProfile.consentChannels',
    label: 'A customer may consent',
    noneWord: 'in no way',
    options: [
      { value: 'in-person', label: 'in person' },
      { value: 'link', label: 'by link' },
      { value: 'telephone', label: 'by telephone' },
    ],
  },
  {
    kind: 'number',
    key: 'lawProfile.retentionYears',
    label: 'Records are kept for',
    unit: 'years',
    low: 1,
    high: 100,
  },
  yesNoRow('lawProfile.secondPersonForTorque', 'A second person checks torque', {
    yes: 'always',
    no: 'not here',
  }),
  {
    kind: 'day',
    key: 'lawProfile.confirmedOn',
    label: 'Confirmed by the owner on',
    optional: 'not confirmed yet',
  },
]

const dollarText = (cents: number | null): string => (cents === null ? '' : (cents / 100).toFixed(2))
const centsIn = (values: RowValues, key: string): number => Math.round((figureIn(values, key) ?? 0) * 100)

export const placeValues = ({ hours, lawProfile, ...place }: PlaceContent): RowValues => ({
  name: place.name,
  address: place.address,
  bays: String(place.bays),
  altitudeFeet: String(place.altitudeFeet),
  timeZone: place.timeZone,
  ...Object.fromEntries(
    hours.map((day, index) => [`hours.${index}`, day === null ? '' : `${day.opens}-${day.closes}`]),
  ),
  'lawProfile.writtenEstimateAboveCents': dollarText(lawProfile.writtenEstimateAboveCents),
  ...overrunValues(lawProfile.overrun),
  'lawProfile.consentChannels': lawProfile.consentChannels.join(','),
  'lawProfile.retentionYears': String(lawProfile.retentionYears),
  'lawProfile.secondPersonForTorque': yesNo(lawProfile.secondPersonForTorque),
  'lawProfile.confirmedOn': lawProfile.confirmedOn ?? '',
})

const overrunValues = (rule: OverrunRule): RowValues => ({
  'lawProfile.overrun.kind': rule.kind,
  ...('percentThousandths' in rule
    ? { 'lawProfile.overrun.percentThousandths': String(rule.percentThousandths / 1_000) }
    : {}),
  ...('cents' in rule ? { 'lawProfile.overrun.cents': dollarText(rule.cents) } : {}),
  ...('capCents' in rule ? { 'lawProfile.overrun.capCents': dollarText(rule.capCents) } : {}),
})

export const placeContent = (values: RowValues): PlaceContent => ({
  name: textIn(values, 'name'),
  address: textIn(values, 'address'),
  hours: days.map((_, index) => hoursFrom(textIn(values, `hours.${index}`)) ?? null),
  bays: figureIn(values, 'bays') ?? 0,
  altitudeFeet: figureIn(values, 'altitudeFeet') ?? 0,
  timeZone: textIn(values, 'timeZone'),
  lawProfile: {
    writtenEstimateAboveCents: centsIn(values, 'lawProfile.writtenEstimateAboveCents'),
    overrun: overrunIn(values),
    consentChannels: severalIn(values, 'lawProfile.consentChannels') as Channel[],
    retentionYears: figureIn(values, 'lawProfile.retentionYears') ?? 0,
    secondPersonForTorque: textIn(values, 'lawProfile.secondPersonForTorque') === 'yes',
    confirmedOn: textIn(values, 'lawProfile.confirmedOn') || null,
  },
})

const overrunIn = (values: RowValues): OverrunRule => {
  const percentThousandths = Math.round(
    (figureIn(values, 'lawProfile.overrun.percentThousandths') ?? 0) * 1_000,
  )
  const cents = centsIn(values, 'lawProfile.overrun.cents')
  const capCents =
    textIn(values, 'lawProfile.overrun.capCents') === ''
      ? null
      : centsIn(values, 'lawProfile.overrun.capCents')
  switch (values['lawProfile.overrun.kind']) {
    case 'percent':
      return { kind: 'percent', percentThousandths, capCents }
    case 'amount':
      return { kind: 'amount', cents }
    case 'greater-of':
      return { kind: 'greater-of', percentThousandths, cents, capCents }
    case 'lesser-of':
      return { kind: 'lesser-of', percentThousandths, cents }
    default:
      return { kind: 'none' }
  }
}
