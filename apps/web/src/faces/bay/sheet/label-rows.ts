import type { EnteredFigure } from '@bayledger/contract/sheets'
import { LoadClass } from '@bayledger/reckoning/sheet'
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import { printedFrom } from '@bayledger/reckoning/units/printed-pressure'
import { sheetFaults } from '../../../lib/fault-words.ts'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'
import { number, options, readFrom, sourceRows, text } from './row-parts.ts'

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

/** The rows of the label in the door: its pressures, in the unit that it prints, and its tires. */
export const labelRows = (values: RowValues): readonly Row[] => [
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

const tireIn = (values: RowValues, at: string) => ({
  size: text(values, `${at}Size`),
  loadClass: text(values, `${at}Class`) as LoadClass,
  sidewallMaximumPsi: number(values, `${at}Sidewall`),
})

const printedIn = (values: RowValues, key: string) =>
  printedFrom({ value: number(values, key), unit: labelUnit(values) })

/** The label that the rows describe. */
export const labelIn = (values: RowValues): EnteredFigure => {
  const front = tireIn(values, 'frontTire')
  return {
    figure: 'placard',
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
