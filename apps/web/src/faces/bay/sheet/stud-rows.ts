import type { EnteredFigure } from '@bayledger/contract/sheets'
import { SheetStuds } from '@bayledger/reckoning/sheet'
import { readSequence } from '@bayledger/reckoning/torque/read-sequence'
import { readThread } from '@bayledger/reckoning/torque/read-thread'
import { usualRetorqueMiles } from '@bayledger/reckoning/torque/retorque'
import { hasStarSequence } from '@bayledger/reckoning/torque/star-sequence'
import { sheetFaults } from '../../../lib/fault-words.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'
import { number, options, readFrom, sourceRows, text } from './row-parts.ts'

/** The rows of a wheel's fasteners. */
export const studRows = (values: RowValues): readonly Row[] => [
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

const orderIn = (values: RowValues): number[] | null => {
  const read =
    text(values, 'order') === '' ? null : readSequence(text(values, 'order'), number(values, 'count'))
  return read?.ok ? [...read.value] : null
}

/** The fasteners that the rows describe. */
export const studsIn = (values: RowValues): EnteredFigure => ({
  figure: 'studTorque',
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
})
