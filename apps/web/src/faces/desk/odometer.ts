import type { Distance } from '@bayledger/reckoning/quantity'
import { judgeOdometer } from '@bayledger/reckoning/vehicle/judge-odometer'
import { refusals } from '@bayledger/wording/en/refusals'
import type { TypedFigure } from '../../ui/number-text.ts'

/** Why the typed odometer cannot be recorded; an empty field means "not read" and is allowed. */
export const odometerFault = (
  typed: TypedFigure,
  before: Distance | null,
  confirmed: boolean,
): string | undefined => {
  if (typed === 'unreadable' || (typed !== null && typed < 0))
    return 'The odometer is no figure in miles. Correct it, or leave it empty if nobody read it.'
  const read = odometerRead(typed)
  if (read === null) return undefined
  const why = judgeOdometer(read, before)
  return why === 'plausible' || (why === 'unlikely' && confirmed)
    ? undefined
    : refusals.ODOMETER_IMPLAUSIBLE({ why, read, before })
}

/** Whether the typed figure is one that a person confirms. */
export const isUnlikely = (typed: TypedFigure, before: Distance | null): boolean => {
  const read = odometerRead(typed)
  return read !== null && judgeOdometer(read, before) === 'unlikely'
}

/** The value for the ledger; call `odometerFault` first. */
export const odometerRead = (typed: TypedFigure): { value: number; unit: 'mi' } | null =>
  typeof typed === 'number' ? { value: typed, unit: 'mi' } : null
