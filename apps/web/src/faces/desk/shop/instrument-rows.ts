import type { InstrumentContent, InstrumentFacts } from '@bayledger/contract/instruments'
import { calibrationLapse, cyclesLeft } from '@bayledger/reckoning/torque/calibration'
import type { Kept } from '../../../lib/record-source.ts'
import { figureIn, type RecordRow, textIn, yesNo } from '../../../ui/record/record-rows.ts'
import type { RowOption, RowValues } from '../../../ui/rows/rows.ts'

export type KeptInstrument = Kept<InstrumentContent, InstrumentFacts>
type Unit = Extract<InstrumentContent, { kind: 'wrench' }>['rangeUnit']

const wrenchRows = (unit: string): RecordRow[] => [
  { kind: 'number', key: 'rangeLow', label: 'Scale begins at', unit, low: 0.1, high: 2_000, decimals: 1 },
  { kind: 'number', key: 'rangeHigh', label: 'Scale ends at', unit, low: 0.1, high: 2_000, decimals: 1 },
  {
    kind: 'choice',
    key: 'rangeUnit',
    label: 'Unit of the scale',
    options: (['lbf·ft', 'lbf·in', 'N·m'] as const).map((value) => ({ value, label: value })),
  },
  {
    kind: 'number',
    key: 'accuracyPercent',
    label: 'Accuracy by its maker',
    unit: '%',
    low: 0.1,
    high: 20,
    decimals: 1,
    optional: 'not known',
  },
  { kind: 'day', key: 'calibratedOn', label: 'Calibrated on', optional: 'not known', part: 'Calibration' },
  {
    kind: 'day',
    key: 'dueOn',
    label: 'Due on',
    hint: 'It may be used on this day, and not after it. Twelve months or 5,000 clicks, whichever comes first.',
  },
  { kind: 'text', key: 'certificate', label: 'Certificate', most: 60, optional: 'none' },
]

const gaugeRows: readonly RecordRow[] = [
  {
    kind: 'number',
    key: 'offsetPsi',
    label: 'Shows against the master gauge',
    unit: 'psi',
    low: -20,
    high: 20,
    decimals: 2,
    hint: 'Plus where it shows more than the master. Readings are corrected by it.',
  },
  { kind: 'day', key: 'checkedOn', label: 'Checked on', optional: 'not known' },
  { kind: 'day', key: 'dueOn', label: 'To be checked by', optional: 'no day set' },
]

/** The rows of a wrench or a gauge; `places` are the shop's own. */
export const instrumentRows =
  (places: readonly RowOption[]) =>
  (values: RowValues): readonly RecordRow[] => [
    {
      kind: 'choice',
      key: 'kind',
      label: 'What it is',
      options: [
        { value: 'wrench', label: 'torque wrench' },
        { value: 'gauge', label: 'tire gauge' },
      ],
    },
    { kind: 'text', key: 'code', label: 'Code', most: 20, exact: true, hint: 'As it is written on it.' },
    { kind: 'choice', key: 'locationId', label: 'Place', options: places },
    ...(values.kind === 'wrench' ? wrenchRows(values.rangeUnit ?? '') : []),
    ...(values.kind === 'gauge' ? gaugeRows : []),
    {
      kind: 'choice',
      key: 'quarantined',
      label: 'May it be used',
      options: [
        { value: 'no', label: 'yes' },
        { value: 'yes', label: 'no, it is in quarantine' },
      ],
      part: 'Quarantine',
    },
    ...(values.quarantined === 'yes'
      ? [{ kind: 'text', key: 'why', label: 'Why it is in quarantine', most: 200 } as const]
      : []),
  ]

const text = (value: number | string | null): string => (value === null ? '' : String(value))

export const instrumentValues = (content: InstrumentContent): RowValues => ({
  kind: content.kind,
  code: content.code,
  locationId: content.locationId,
  dueOn: content.dueOn ?? '',
  quarantined: yesNo(content.quarantined),
  why: content.why ?? '',
  ...(content.kind === 'wrench'
    ? {
        rangeLow: text(content.rangeLow),
        rangeHigh: text(content.rangeHigh),
        rangeUnit: content.rangeUnit,
        accuracyPercent: text(content.accuracyPercent),
        calibratedOn: content.calibratedOn ?? '',
        certificate: content.certificate ?? '',
      }
    : { offsetPsi: text(content.offsetPsi), checkedOn: content.checkedOn ?? '' }),
})

export const instrumentContent = (values: RowValues): InstrumentContent => {
  const orNull = (key: string): string | null => textIn(values, key) || null
  const shared = {
    code: textIn(values, 'code'),
    locationId: textIn(values, 'locationId'),
    quarantined: textIn(values, 'quarantined') === 'yes',
    why: textIn(values, 'quarantined') === 'yes' ? orNull('why') : null,
  }
  return values.kind === 'gauge'
    ? {
        kind: 'gauge',
        ...shared,
        offsetPsi: figureIn(values, 'offsetPsi') ?? 0,
        checkedOn: orNull('checkedOn'),
        dueOn: orNull('dueOn'),
      }
    : {
        kind: 'wrench',
        ...shared,
        rangeLow: figureIn(values, 'rangeLow') ?? 0,
        rangeHigh: figureIn(values, 'rangeHigh') ?? 0,
        rangeUnit: textIn(values, 'rangeUnit') as Unit,
        accuracyPercent: figureIn(values, 'accuracyPercent'),
        calibratedOn: orNull('calibratedOn'),
        dueOn: textIn(values, 'dueOn'),
        certificate: orNull('certificate'),
      }
}

/** The line of the list: scale or offset, and what its calibration still allows. `today`: YYYY-MM-DD, UTC. */
export const instrumentLine = ({ content, facts }: KeptInstrument, today: string): string => {
  const state = content.quarantined ? 'in quarantine' : null
  if (content.kind === 'gauge') {
    const { offsetPsi, dueOn } = content
    const offset =
      offsetPsi === 0
        ? 'agrees with the master'
        : `${offsetPsi > 0 ? '+' : '−'}${Math.abs(offsetPsi)} psi against the master`
    return [offset, dueOn === null ? null : dueWords('check', dueOn, today), state]
      .filter(Boolean)
      .join(' · ')
  }
  const left = cyclesLeft(facts.cycles ?? 0)
  return [
    `${content.rangeLow} to ${content.rangeHigh} ${content.rangeUnit}`,
    dueWords('calibration', content.dueOn, today),
    left === 0 ? 'its clicks are spent' : `${left.toLocaleString('en-US')} clicks left`,
    state,
  ]
    .filter(Boolean)
    .join(' · ')
}

const dueWords = (what: string, dueOn: string, today: string): string => {
  if (dueOn < today) return `${what} overdue since ${dueOn}`
  return dueOn === today ? `${what} ends today` : `${what} due ${dueOn}`
}

/** Days are listed so long ahead. */
const daysAhead = 7

/** What needs doing, in one line for the left list: what is overdue or spent, and what is due within a week. */
export const instrumentNeeds = (all: readonly KeptInstrument[], today: string): string | null => {
  const inUse = all.filter(({ content }) => !content.quarantined)
  const isOver = ({ content, facts }: KeptInstrument) =>
    content.dueOn !== null &&
    calibrationLapse({ dueOn: content.dueOn, cycles: facts.cycles ?? 0 }, today) !== null
  const over = inUse.filter(isOver)
  const until = new Date(Date.parse(`${today}T00:00:00Z`) + daysAhead * 86_400_000).toISOString().slice(0, 10)
  const soon = inUse.filter((one) => !isOver(one) && one.content.dueOn !== null && one.content.dueOn <= until)
  const codes = (some: readonly KeptInstrument[]) => some.map(({ content }) => content.code).join(', ')
  const lines = [
    over.length === 0 ? null : `overdue: ${codes(over)}`,
    soon.length === 0 ? null : `due within a week: ${codes(soon)}`,
  ].filter((line) => line !== null)
  return lines.length === 0 ? null : lines.join('; ')
}
