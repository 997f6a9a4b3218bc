import { choiceCell, maybe, maybeTextCell, numberCell, textCell } from '../../../core/csv/cells.ts'
import type { RowOf } from '../../../core/csv/csv-table.ts'
import { unitBeside } from '../../../words/csv-words.ts'

/**
 * What a file of the price book holds, one price a row. `item` names it; `value` is dollars, hours or a percentage, as
 * `unit` says. The columns after `words` are of fees, discounts, seasons and
 * items. A value that is empty is of something that is
 * not sold.
 */
export const priceColumns = {
  item: textCell(60),
  value: maybe(numberCell({ from: -50, to: 100_000, unit: unitBeside })),
  unit: choiceCell(['$', 'h', '%', 'aspect', 'list', 'basis']),
  words: maybeTextCell(80),
  cap: maybe(numberCell({ from: 0, to: 100_000, unit: '$' })),
  each: maybe(choiceCell(['tire', 'sensor', 'wheel'])),
  tax_class: maybe(choiceCell(['fee', 'tire', 'none'])),
  from: maybe(textCell(5)),
  to: maybe(textCell(5)),
  classes: maybeTextCell(60),
  kind: maybe(choiceCell(['tire', 'part', 'labor', 'outside', 'fee'])),
  size: maybeTextCell(40),
  deposit: maybe(numberCell({ from: 0, to: 100_000, unit: '$' })),
}
export type PriceRow = RowOf<typeof priceColumns>

export const blankRow: Omit<PriceRow, 'item' | 'value' | 'unit'> = {
  words: '',
  cap: null,
  each: null,
  tax_class: null,
  from: null,
  to: null,
  classes: '',
  kind: null,
  size: '',
  deposit: null,
}
