import type { OrderState } from '@bayledger/ledger/state'
import { FastenerDamage, StemCondition, TireDamage, ValveKind } from '@bayledger/reckoning/evidence/evidence'
import type { CalendarDay } from '@bayledger/reckoning/units/calendar-day'
import { type WheelPosition, wheelNames } from '@bayledger/reckoning/wheels'
import type { ReactNode } from 'react'
import { draftEntry, type WrittenDraft } from '../../../features/ledger/draft-entry.ts'
import { numberFrom } from '../../../ui/number-text.ts'
import { RowForm } from '../form/row-form.tsx'
import { noneOfThem, type Row, type RowValues } from '../form/rows.ts'
import { useRecord } from '../record/use-record.ts'
import { useCalendarDay } from '../session/today.ts'
import { dateCodeRow, yearsByDateCode } from './date-code-row.ts'

const optional = 'not looked at'
const number = { kind: 'number', optional, low: 0 } as const

const rowsFor = (values: RowValues, today: CalendarDay): readonly Row[] => [
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
  {
    kind: 'choice',
    key: 'stem',
    label: 'Stem',
    optional,
    options: [
      { value: 'sound', label: 'Sound' },
      { value: 'corroded', label: 'Corroded' },
      { value: 'cracked', label: 'Cracked' },
      { value: 'leaks', label: 'Leaks' },
    ],
  },
  { ...number, key: 'tread', label: 'Tread', unit: '/32 in', high: 40, limits: { whole: 2, decimals: 1 } },
  dateCodeRow(values.dateCode, today),
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
  {
    kind: 'several',
    key: 'damage',
    label: 'Tire damage',
    optional,
    noneWord: 'no damage',
    options: [
      { value: 'bulge', label: 'Bulge' },
      { value: 'cord-showing', label: 'Cord showing' },
      { value: 'cut-to-cord', label: 'Cut to the cord' },
      { value: 'puncture', label: 'Puncture' },
      { value: 'run-low-dust', label: 'Run-low dust' },
    ],
  },
  {
    kind: 'several',
    key: 'fasteners',
    label: 'Nuts and studs',
    optional,
    noneWord: 'all sound',
    options: [
      { value: 'stud-missing', label: 'Stud missing' },
      { value: 'stud-broken', label: 'Stud broken' },
      { value: 'fastener-missing', label: 'Nut missing' },
      { value: 'thread-stripped', label: 'Thread stripped' },
      { value: 'seat-wrong', label: 'Wrong seat' },
    ],
  },
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

/** Tire, stem and fasteners as they came; every part may be left out, and is then "not checked". */
export function TireForm({
  state,
  wheel,
  tabs,
  row,
  onDone,
}: {
  state: OrderState
  wheel: WheelPosition
  tabs: ReactNode
  row?: string | undefined
  onDone: () => void
}) {
  const { recordAll, busy, problem } = useRecord(state.orderId)
  const today = useCalendarDay()
  return (
    <RowForm
      draftKey={`${state.orderId}/tire/${wheel}`}
      title={`Look at the ${wheelNames[wheel]} tire`}
      beside={tabs}
      rows={(values) => rowsFor(values, today)}
      firstRow={row}
      recordWord="Record what was looked at"
      whyNot={(values) =>
        rowsFor(values, today).some(({ key }) => values[key])
          ? undefined
          : 'Look at one thing at least, or go on to another.'
      }
      busy={busy}
      problem={problem}
      onRecord={async (values, restore) => {
        const taken = await recordAll(entriesOf(state.orderId, wheel, values, today), `${wheel} tire`, {
          restore,
        })
        if (taken) onDone()
        return taken
      }}
    />
  )
}

const entriesOf = (
  orderId: string,
  wheel: WheelPosition,
  values: RowValues,
  today: CalendarDay,
): WrittenDraft[] => {
  const { mounted } = values
  const fitted = mounted === 'road' || mounted === 'temporary-spare' ? mounted : null
  const looked = rowsFor(values, today).some(({ key }) => key !== 'mounted' && values[key])
  return [
    ...(looked
      ? [
          draftEntry(orderId, 'tire.inspected', {
            when: 'arrival',
            stepKey: null,
            wheel,
            valve: oneOf(ValveKind.options, values.valve),
            stem: oneOf(StemCondition.options, values.stem),
            treadDepth32nds: numberFrom(values.tread ?? ''),
            tireAgeYears: yearsByDateCode(values.dateCode, today),
            sensorAgeMonths: numberFrom(values.sensorAge ?? ''),
            sealantSeen: values.sealant ? values.sealant === 'yes' : null,
            tireDamage: someOf(TireDamage.options, values.damage),
            fastenerDamage: someOf(FastenerDamage.options, values.fasteners),
            inside: null,
          }),
        ]
      : []),
    ...(fitted === null
      ? []
      : [
          draftEntry(orderId, 'wheel.checked', {
            phase: 'arrival',
            stepKey: null,
            wheel,
            mounted: fitted,
            gauge: null,
            sensor: null,
            notPossible: [],
          }),
        ]),
  ]
}

const oneOf = <T extends string>(options: readonly T[], value: string | null | undefined): T | null =>
  options.find((option) => option === value) ?? null

/** `null`: not inspected; an empty list: inspected, none found. */
const someOf = <T extends string>(options: readonly T[], value: string | null | undefined): T[] | null =>
  value ? (value === noneOfThem ? [] : options.filter((option) => value.split(',').includes(option))) : null
