import type { EnteredFigure } from '@bayledger/contract/sheets'
import { tooLong } from '../../../lib/fault-words.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'
import { readFrom, sourceRows, text } from './row-parts.ts'

/** The rows of what to know of lifting a vehicle. */
export const liftingRows = (): readonly Row[] => [
  {
    kind: 'text',
    key: 'liftNotes',
    label: 'Lifting points',
    hint: 'Where arms or pads go, and where they must not; what is switched off first.',
    fault: (typed) => tooLong(typed, 500),
  },
  ...sourceRows({ value: 'vehicle maker’s handbook, lifting, page ', label: 'Handbook, lifting, page …' }),
]

/** The lifting points that the rows describe. */
export const liftingIn = (values: RowValues): EnteredFigure => ({
  figure: 'lifting',
  liftNotes: text(values, 'liftNotes'),
  ...readFrom(values),
})
