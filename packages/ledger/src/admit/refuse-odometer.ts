import type { Distance } from '@bayledger/reckoning/quantity'
import { judgeOdometer } from '@bayledger/reckoning/vehicle/judge-odometer'
import { type Refusal, refuse } from './refusal.ts'

/** Refuses a reading that cannot be right, and an unlikely one until somebody has confirmed it. */
export const refuseOdometer = (
  read: Distance,
  before: Distance | null,
  confirmed: boolean,
): Refusal | null => {
  const why = judgeOdometer(read, before)
  return why === 'plausible' || (why === 'unlikely' && confirmed)
    ? null
    : refuse('ODOMETER_IMPLAUSIBLE', { why, read, before })
}
