import type { TypedFigure } from '../../ui/number-text.ts'

/** Why an odometer as typed cannot be recorded; nothing typed is "not read" and may stand. */
export const odometerFault = (typed: TypedFigure): string | undefined =>
  typed === 'unreadable' || (typed !== null && typed < 0)
    ? 'The odometer is no figure in miles. Correct it, or leave it empty if nobody read it.'
    : undefined

/** For the ledger; a fault is told before. */
export const odometerRead = (typed: TypedFigure): { value: number; unit: 'mi' } | null =>
  typeof typed === 'number' ? { value: typed, unit: 'mi' } : null
