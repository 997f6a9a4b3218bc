import { FigureSource } from '@bayledger/reckoning/sheet'
import { seen } from '@bayledger/wording/en/report/seen'
import { tooLong } from '../../../lib/fault-words.ts'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'

/** Options that are their own words. */
export const options = <Value extends string>(values: readonly Value[]) =>
  values.map((value) => ({ value, label: value }))

/** Where a figure was read: asked last, of every figure. */
export const sourceRows = (suggestion: {
  readonly value: string
  readonly label: string
}): readonly Row[] => [
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

/** A number as it was typed; 0 where there is none. */
export const number = (values: RowValues, key: string): number => numberFrom(values[key] ?? '') ?? 0

/** A text as it was typed, without blanks at its ends. */
export const text = (values: RowValues, key: string): string => (values[key] ?? '').trim()

/** Where the rows say that the figure was read. */
export const readFrom = (values: RowValues) => ({
  kind: text(values, 'source') as FigureSource['kind'],
  reference: text(values, 'reference'),
})
