import type { PayloadOf } from '@bayledger/ledger/registry'
import { FastenerDamage, StemCondition, TireDamage, ValveKind } from '@bayledger/reckoning/evidence/evidence'
import type { CalendarDay } from '@bayledger/reckoning/units/calendar-day'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { numberFrom } from '../../../ui/number-text.ts'
import { noneOfThem, type RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'
import { punctureRows, puncturesOf } from '../holes/puncture-rows.ts'
import { yearsByDateCode } from './date-code-row.ts'
import { sidewallRows, sidewallSeen } from './sidewall-rows.ts'
import { acrossOf, wearOf, wearRows } from './wear-rows.ts'

const optional = 'not looked at'
const number = { kind: 'number', optional, low: 0 } as const

const stem: Row = {
  kind: 'choice',
  key: 'stem',
  label: 'Stem',
  options: [
    { value: 'sound', label: 'Sound' },
    { value: 'corroded', label: 'Corroded' },
    { value: 'cracked', label: 'Cracked' },
    { value: 'leaks', label: 'Leaks' },
  ],
}

/** A tire may be harmed in several ways at once. */
const damage: Row = {
  kind: 'several',
  key: 'damage',
  label: 'Tire damage',
  noneWord: 'no damage',
  options: [
    { value: 'bulge', label: 'Bulge' },
    { value: 'cord-showing', label: 'Cord showing' },
    { value: 'cut-to-cord', label: 'Cut to the cord' },
    { value: 'puncture', label: 'Puncture' },
    { value: 'run-low-dust', label: 'Run-low dust' },
  ],
}

const fasteners: Row = {
  kind: 'several',
  key: 'fasteners',
  label: 'Nuts and studs',
  noneWord: 'all sound',
  options: [
    { value: 'stud-missing', label: 'Stud missing' },
    { value: 'stud-broken', label: 'Stud broken' },
    { value: 'fastener-missing', label: 'Nut missing' },
    { value: 'thread-stripped', label: 'Thread stripped' },
    { value: 'seat-wrong', label: 'Wrong seat' },
  ],
}

/** A spare lies loose: it has no nuts of its own to look at. */
const isBolted = (wheel: WheelPosition): boolean => wheel !== 'SP'

const looked = (wheel: WheelPosition): Row => ({
  kind: 'choice',
  key: 'look',
  label: isBolted(wheel) ? 'Tire, stem, nuts and studs' : 'Tire and stem',
  options: [
    {
      value: 'sound',
      label: 'All sound',
      detail: isBolted(wheel) ? 'tire, stem, every nut and stud' : 'tire and stem',
    },
    { value: 'parts', label: 'Not all', detail: 'go through it part by part' },
  ],
})

/** Deeper tread is rare; half of a thirty-second is read by few gauges. */
const treads = ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '10', '11', '12']

const tread: Row = {
  kind: 'choice',
  key: 'tread',
  label: 'Tread at its lowest, in 32nds of an inch',
  isShort: true,
  options: [...treads.map((value) => ({ value, label: value })), { value: 'other', label: 'other' }],
}

const treadTyped: Row = {
  kind: 'number',
  key: 'treadTyped',
  label: 'Tread',
  unit: '/32 in',
  low: 0,
  high: 40,
  limits: { whole: 2, decimals: 1 },
}

const isPunctured = ({ damage: seen }: RowValues): boolean => (seen ?? '').split(',').includes('puncture')

/** A nail that is seen before anything is opened: where it is and how wide, as far as that shows. */
const seenHoles = (values: RowValues): readonly Row[] =>
  isPunctured(values) ? punctureRows(values, 'outside') : []

/** The look at one wheel as it came: one press for what is sound, part by part where something is not, and the tread. */
export const lookRows = (values: RowValues, wheel: WheelPosition): readonly Row[] => [
  looked(wheel),
  ...(values.look === 'parts'
    ? [stem, damage, ...seenHoles(values), ...(isBolted(wheel) ? [fasteners] : [])]
    : []),
  tread,
  ...(values.tread === 'other' ? [treadTyped] : []),
]

/** Everything that can be seen of a wheel, each part for itself. */
export const partRows = (
  values: RowValues,
  wheel: WheelPosition,
  today: CalendarDay,
  sidewall: Parameters<typeof sidewallRows>[2],
): readonly Row[] => [
  {
    kind: 'choice',
    key: 'valve',
    label: 'Valve',
    optional,
    options: [
      { value: 'snap-in', label: 'Rubber, snap-in' },
      { value: 'clamp-in', label: 'Metal, clamp-in' },
      { value: 'plain', label: 'Plain', detail: 'no sensor on it' },
    ],
  },
  { ...stem, optional },
  { ...treadTyped, ...number, key: 'treadTyped', high: 40 },
  ...wearRows(values, wheel),
  ...sidewallRows(values, today, sidewall),
  {
    ...number,
    key: 'sensorAge',
    label: 'Sensor age',
    unit: 'months',
    high: 400,
    limits: { whole: 3, decimals: 0 },
  },
  {
    kind: 'choice',
    key: 'sealant',
    label: 'Sealant',
    optional,
    options: [
      { value: 'no', label: 'None seen' },
      { value: 'yes', label: 'Sealant seen' },
    ],
  },
  { ...damage, optional },
  ...seenHoles(values),
  { ...fasteners, optional },
  {
    kind: 'choice',
    key: 'mounted',
    label: 'Fitted here',
    optional,
    options: [
      { value: 'road', label: 'Road wheel' },
      { value: 'temporary-spare', label: 'Temporary spare' },
    ],
  },
]

/** What was filled in, as the ledger takes it; `null` is not inspected, an empty list is inspected and none found. */
export const tireInspectedOf = (
  wheel: WheelPosition,
  values: RowValues,
  today: CalendarDay,
): PayloadOf<'tire.inspected'> => {
  const isSound = values.look === 'sound'
  const across = acrossOf(values)
  return {
    when: 'arrival',
    stepKey: null,
    wheel,
    valve: oneOf(ValveKind.options, values.valve),
    stem: isSound ? 'sound' : oneOf(StemCondition.options, values.stem),
    treadDepth32nds:
      numberFrom((values.tread && values.tread !== 'other' ? values.tread : values.treadTyped) ?? '') ??
      (across && Math.min(across.inner, across.middle, across.outer)),
    tireAgeYears: yearsByDateCode(values.dateCode, today),
    sensorAgeMonths: numberFrom(values.sensorAge ?? ''),
    sealantSeen: values.sealant ? values.sealant === 'yes' : null,
    tireDamage: isSound ? [] : someOf(TireDamage.options, values.damage),
    fastenerDamage: isSound && isBolted(wheel) ? [] : someOf(FastenerDamage.options, values.fasteners),
    inside: null,
    ...(!isSound && isPunctured(values) ? { punctures: puncturesOf(values, 'outside') } : {}),
    ...sidewallSeen(values),
    ...wearOf(values),
  }
}

const oneOf = <T extends string>(options: readonly T[], value: string | null | undefined): T | null =>
  options.find((option) => option === value) ?? null

/** `null`: not inspected; an empty list: inspected, none found. */
const someOf = <T extends string>(options: readonly T[], value: string | null | undefined): T[] | null =>
  value ? (value === noneOfThem ? [] : options.filter((option) => value.split(',').includes(option))) : null
