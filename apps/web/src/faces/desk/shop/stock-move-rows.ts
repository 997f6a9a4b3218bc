import type { StockChange, StockChangeRequest } from '@bayledger/contract/stock'
import { figureIn, type RecordRow, textIn } from '../../../ui/record/record-rows.ts'
import type { RowOption, RowValues } from '../../../ui/rows/rows.ts'

/** What each movement is called in a history. */
export const moves: Readonly<Record<StockChange['kind'], string>> = {
  opened: 'there when the list began',
  received: 'received',
  counted: 'by a count',
  scrapped: 'scrapped',
  sent: 'sent to another place',
  arrived: 'arrived from another place',
  'core-returned': 'no part moved, old parts given back',
  drawn: 'drawn',
  withdrawn: 'put back: its entry was withdrawn',
}

const quantity: RecordRow = {
  kind: 'number',
  key: 'quantity',
  label: 'How many',
  unit: '',
  low: 1,
  high: 9_999,
}
const lot: RecordRow = {
  kind: 'text',
  key: 'lot',
  label: 'Lot',
  most: 60,
  exact: true,
  optional: 'not marked',
  hint: 'As on the box. By it the vehicles are found if the maker calls it back.',
}
const note = (label: string, optional?: string): RecordRow => ({
  kind: 'text',
  key: 'words',
  label,
  ...(optional === undefined ? {} : { optional }),
})

/** The rows of one movement, by what is chosen first. */
export const moveRows = (
  values: RowValues,
  places: readonly RowOption[],
  coresOwed: number,
): readonly RecordRow[] => {
  const choice: RecordRow = {
    kind: 'choice',
    key: 'move',
    label: 'What was done',
    options: [
      { value: 'received', label: 'received' },
      { value: 'counted', label: 'counted' },
      { value: 'scrapped', label: 'scrapped' },
      ...(places.length > 0 ? [{ value: 'sent', label: 'sent to another place' }] : []),
      ...(coresOwed > 0 ? [{ value: 'core-returned', label: 'old parts given back' }] : []),
    ],
  }
  switch (values.move) {
    case 'counted':
      return [
        choice,
        { kind: 'number', key: 'quantity', label: 'How many are there', unit: '', low: 0, high: 99_999 },
        note('Remark', 'none'),
      ]
    case 'scrapped':
      return [choice, quantity, lot, note('Why')]
    case 'sent':
      return [choice, quantity, lot, { kind: 'choice', key: 'toLocationId', label: 'To', options: places }]
    case 'core-returned':
      return [choice, quantity, note('Remark', 'none')]
    default:
      return [
        choice,
        quantity,
        lot,
        { kind: 'number', key: 'cores', label: 'Old parts owed for them', unit: '', low: 0, high: 9_999 },
        note('Slip or remark', 'none'),
      ]
  }
}

/** What is sent; called only while no row is at fault. `listed`: what the list says now, which a count is held against. */
export const changeOf = (values: RowValues, listed: number): StockChangeRequest => {
  const count = figureIn(values, 'quantity') ?? 0
  const words = textIn(values, 'words') || null
  const ofLot = textIn(values, 'lot') || null
  switch (values.move) {
    case 'counted':
      return { kind: 'counted', found: count, listed, words }
    case 'scrapped':
      return { kind: 'scrapped', quantity: count, lot: ofLot, words: words ?? '' }
    case 'sent':
      return { kind: 'sent', quantity: count, lot: ofLot, toLocationId: textIn(values, 'toLocationId') }
    case 'core-returned':
      return { kind: 'core-returned', cores: count, words }
    default:
      return { kind: 'received', quantity: count, lot: ofLot, cores: figureIn(values, 'cores') ?? 0, words }
  }
}
