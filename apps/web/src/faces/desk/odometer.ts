import type { TypedFigure } from '../../ui/number-text.ts'

/** Why the typed odometer cannot be recorded; an empty field means "not read" and is allowed. */
export const odometerFault = (typed: TypedFigure): string | undefined =>
  typed === 'unreadable' || (typed !== null && typed < 0)
    ? 'The odometer is no figure in miles. Correct it, or leave it empty if nobody read it.'
    : undefined

/** The value for the ledger; call `odometerFault` first. */
export const odometerRead = (typed: TypedFigure): { value: number; unit: 'mi' } | null =>
  typeof typed === 'number' ? { value: typed, unit: 'mi' } : null
