import type { EnteredFigure } from '@bayledger/contract/sheets'
import { FigureSource, LoadClass, type SafetyFigure, SheetStuds } from '@bayledger/reckoning/sheet'
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import { readSequence } from '@bayledger/reckoning/torque/read-sequence'
import { readThread } from '@bayledger/reckoning/torque/read-thread'
import { usualRetorqueMiles } from '@bayledger/reckoning/torque/retorque'
import { hasStarSequence } from '@bayledger/reckoning/torque/star-sequence'
import { printedFrom } from '@bayledger/reckoning/units/printed-pressure'
import { seen } from '@bayledger/wording/en/report/seen'
import { sheetFaults, tooLong } from '../../../lib/fault-words.ts'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'

const options = <Value extends string>(values: readonly Value[]) =>
  values.map((value) => ({ value, label: value }))

const psiRow = (key: string, label: string): Row => ({
  kind: 'number',
  key,
  label,
  unit: 'psi',
  low: 10,
  high: 120,
  limits: { whole: 4, decimals: 1 },
  fault: (typed) => {
    const value = numberFrom(typed)
    return value !== null && value > 120 ? sheetFaults.labelInKilopascals(typed) : undefined
  },
})

type LabelUnit = 'psi' | 'kPa' | 'bar'

const labelUnit = ({ labelUnit: unit }: RowValues): LabelUnit =>
  unit === 'kPa' || unit === 'bar' ? unit : 'psi'

/** What labels print at all, in each unit: 10 to 120 psi (`PrintedPressure`). */
const labelRanges = {
  kPa: { low: 70, high: 825, limits: { whole: 3, decimals: 0 } },
  bar: { low: 0.7, high: 8.2, limits: { whole: 1, decimals: 2 } },
} as const

const labelRow = (key: string, label: string, values: RowValues): Row => {
  const unit = labelUnit(values)
  return unit === 'psi' ? psiRow(key, label) : { kind: 'number', key, label, unit, ...labelRanges[unit] }
}

const sourceRows = (suggestion: { readonly value: string; readonly label: string }): readonly Row[] => [
  {
    kind: 'choice',
    key: 'source',
    label: 'Read from',
    options: FigureSource.shape.kind.options.map((value) => ({ value, label: seen.sources[value] })),
  },
  {
    kind: 'text',
    key: 'reference',
    label: 'Where in it',
    hint: 'The door, or the book with its page.',
    suggestions: [suggestion],
    fault: (text) => tooLong(text, 200),
  },
]

const tireRows = (at: string, label: string): readonly Row[] => [
  {
    kind: 'text',
    key: `${at}Size`,
    label: `${label} size`,
    exact: true,
    fault: (text) => {
      const read = readTireSize(text)
      return read.ok ? undefined : sheetFaults.unread(read.allowed, read.do)
    },
  },
  {
    kind: 'choice',
    key: `${at}Class`,
    label: `${label} class`,
    isShort: true,
    options: options(LoadClass.options),
  },
  psiRow(`${at}Sidewall`, `${label} sidewall, most`),
]

const labelRows = (values: RowValues): readonly Row[] => [
  {
    kind: 'choice',
    key: 'labelUnit',
    label: 'The label prints',
    isShort: true,
    options: [
      { value: 'psi', label: 'psi' },
      { value: 'kPa', label: 'kPa, no psi' },
      { value: 'bar', label: 'bar, no psi' },
    ],
  },
  labelRow('front', 'Front', values),
  labelRow('rear', 'Rear', values),
  {
    kind: 'choice',
    key: 'spare',
    label: 'Spare',
    options: [
      { value: 'none', label: 'no spare' },
      { value: 'temporary', label: 'temporary' },
      { value: 'full-size', label: 'full-size' },
    ],
  },
  ...(hasSpare(values) ? [labelRow('spareLabel', 'Spare pressure', values)] : []),
  ...tireRows('frontTire', 'Front tire'),
  {
    kind: 'choice',
    key: 'rearTire',
    label: 'Rear tires',
    options: [
      { value: 'same', label: 'as the front' },
      { value: 'other', label: 'of another size' },
    ],
  },
  ...(values.rearTire === 'other' ? tireRows('otherTire', 'Rear tire') : []),
  ...(hasSpare(values) ? tireRows('spareTire', 'Spare tire') : []),
  ...sourceRows({ value: 'label in the driver’s door', label: 'Label in the driver’s door' }),
]

const hasSpare = ({ spare }: RowValues): boolean => spare === 'temporary' || spare === 'full-size'

const studRows = (values: RowValues): readonly Row[] => [
  {
    kind: 'number',
    key: 'torque',
    label: 'Wheel torque',
    unit: '',
    low: 1,
    high: 2_000,
    limits: { whole: 4, decimals: 1 },
  },
  {
    kind: 'choice',
    key: 'unit',
    label: 'Unit that the source prints',
    options: options(['lbf·ft', 'N·m']),
  },
  {
    kind: 'text',
    key: 'thread',
    label: 'Thread',
    exact: true,
    hint: 'With its pitch, as M12×1.5',
    suggestions: options(['M12×1.5', 'M12×1.25', 'M14×1.5', '1/2-20']),
    fault: (text) => {
      const read = readThread(text)
      return read.ok ? undefined : sheetFaults.unread(read.allowed, read.do)
    },
  },
  {
    kind: 'choice',
    key: 'count',
    label: 'Fasteners a wheel',
    isShort: true,
    options: options(['3', '4', '5', '6', '7', '8', '10']),
  },
  {
    kind: 'text',
    key: 'order',
    label: 'The maker’s own order of tightening',
    exact: true,
    hint: 'As 1-3-5-2-4. Fasteners are numbered clockwise, 1 nearest the valve.',
    ...(hasStarSequence(number(values, 'count')) ? { optional: 'none printed: the star' } : {}),
    fault: (text) => {
      const read = readSequence(text, number(values, 'count'))
      return read.ok ? undefined : sheetFaults.unread(read.allowed, read.do)
    },
  },
  { kind: 'choice', key: 'fastener', label: 'Fastener', options: options(SheetStuds.shape.fastener.options) },
  { kind: 'choice', key: 'seat', label: 'Seat', options: options(SheetStuds.shape.seat.options) },
  {
    kind: 'number',
    key: 'handTurns',
    label: 'Turns by hand, at least',
    unit: 'turns',
    low: 1,
    high: 30,
    limits: { whole: 4, decimals: 1 },
  },
  {
    kind: 'choice',
    key: 'locking',
    label: 'Locking fastener',
    options: [
      { value: 'yes', label: 'one a wheel' },
      { value: 'no', label: 'none' },
    ],
  },
  ...sourceRows({
    value: 'vehicle maker’s service book, wheels, page ',
    label: 'Service book, wheels, page …',
  }),
]

const sensorRows = (values: RowValues): readonly Row[] => [
  {
    kind: 'choice',
    key: 'system',
    label: 'The vehicle watches its tires',
    options: [
      { value: 'direct', label: 'by a sensor in each wheel' },
      { value: 'indirect', label: 'without sensors, by wheel speed' },
      { value: 'none', label: 'not at all' },
    ],
  },
  ...(values.system === 'direct'
    ? ([
        {
          kind: 'choice',
          key: 'megahertz',
          label: 'Frequency, MHz',
          options: options(['315', '433.92', '2400']),
        },
        {
          kind: 'text',
          key: 'protocol',
          label: 'Protocol, as the reader names it',
          fault: (text: string) => tooLong(text, 200),
        },
        { kind: 'choice', key: 'stem', label: 'Stem', options: options(['snap-in', 'clamp-in']) },
        {
          kind: 'choice',
          key: 'wokenBy',
          label: 'Woken by',
          options: [
            { value: 'low-frequency-field', label: 'the reader’s field' },
            { value: 'pressure-drop', label: 'letting air out' },
            { value: 'magnet', label: 'a magnet' },
          ],
        },
        {
          kind: 'number',
          key: 'fit',
          label: values.stem === 'clamp-in' ? 'Stem nut torque' : 'Stem screw torque',
          unit: 'lbf·in',
          low: 5,
          high: 200,
          limits: { whole: 4, decimals: 1 },
        },
        {
          kind: 'number',
          key: 'core',
          label: 'Valve core torque',
          unit: 'lbf·in',
          low: 1,
          high: 20,
          limits: { whole: 4, decimals: 1 },
        },
        ...sourceRows({ value: 'sensor maker’s application sheet', label: 'Sensor maker’s sheet' }),
      ] as const)
    : []),
]

/** The rows of one figure of a sheet, as it is read at the vehicle or in a book. */
export const figureRows = (figure: SafetyFigure, values: RowValues): readonly Row[] => {
  switch (figure) {
    case 'placard':
      return labelRows(values)
    case 'studTorque':
      return studRows(values)
    case 'frequency':
      return sensorRows(values)
  }
}

const number = (values: RowValues, key: string): number => numberFrom(values[key] ?? '') ?? 0
const text = (values: RowValues, key: string): string => (values[key] ?? '').trim()

const tireIn = (values: RowValues, at: string) => ({
  size: text(values, `${at}Size`),
  loadClass: text(values, `${at}Class`) as LoadClass,
  sidewallMaximumPsi: number(values, `${at}Sidewall`),
})

const printedIn = (values: RowValues, key: string) =>
  printedFrom({ value: number(values, key), unit: labelUnit(values) })

const orderIn = (values: RowValues): number[] | null => {
  const read =
    text(values, 'order') === '' ? null : readSequence(text(values, 'order'), number(values, 'count'))
  return read?.ok ? [...read.value] : null
}

const readFrom = (values: RowValues) => ({
  kind: text(values, 'source') as FigureSource['kind'],
  reference: text(values, 'reference'),
})

/** What the rows say, as it is sent. Called only while every row is answered. */
export const figureIn = (figure: SafetyFigure, values: RowValues): EnteredFigure => {
  switch (figure) {
    case 'placard': {
      const front = tireIn(values, 'frontTire')
      return {
        figure,
        placard: {
          front: printedIn(values, 'front'),
          rear: printedIn(values, 'rear'),
          spare: hasSpare(values) ? printedIn(values, 'spareLabel') : null,
        },
        tire: {
          front,
          rear: values.rearTire === 'other' ? tireIn(values, 'otherTire') : front,
          spare: hasSpare(values) ? tireIn(values, 'spareTire') : null,
        },
        spare: text(values, 'spare') as 'none' | 'temporary' | 'full-size',
        ...readFrom(values),
      }
    }
    case 'studTorque':
      return {
        figure,
        studs: {
          count: number(values, 'count'),
          thread: text(values, 'thread'),
          fastener: text(values, 'fastener') as SheetStuds['fastener'],
          seat: text(values, 'seat') as SheetStuds['seat'],
          torque: { value: number(values, 'torque'), unit: text(values, 'unit') as 'lbf·ft' | 'N·m' },
          handTurns: number(values, 'handTurns'),
          makersSequence: orderIn(values),
          lockingFastener: values.locking === 'yes',
          retorqueMiles: usualRetorqueMiles,
        },
        ...readFrom(values),
      }
    case 'frequency':
      return values.system === 'direct' ? sensorIn(values) : noSensors(values)
  }
}

const noSensors = ({ system }: RowValues): EnteredFigure => ({
  figure: 'no-sensors',
  system: system === 'indirect' ? 'indirect' : 'none',
})

const sensorIn = (values: RowValues): EnteredFigure => {
  const fit = { value: number(values, 'fit'), unit: 'lbf·in' } as const
  const isClamped = values.stem === 'clamp-in'
  return {
    figure: 'frequency',
    sensor: {
      frequencyMHz: number(values, 'megahertz'),
      protocol: text(values, 'protocol'),
      stem: isClamped ? 'clamp-in' : 'snap-in',
      mounting: 'valve',
      wokenBy: text(values, 'wokenBy') as 'low-frequency-field' | 'pressure-drop' | 'magnet',
      stemNutTorque: isClamped ? fit : null,
      stemScrewTorque: isClamped ? null : fit,
      coreTorque: { value: number(values, 'core'), unit: 'lbf·in' },
    },
    ...readFrom(values),
  }
}
