import type { OdometerDoubt } from '../questions/odometer.ts'
import { type Refusal, refuse } from './refusal.ts'

/** Refuses a reading that cannot be right, and an unlikely one until somebody has confirmed it. */
export const refuseOdometer = (doubt: OdometerDoubt | null): Refusal | null =>
  doubt && refuse('ODOMETER_IMPLAUSIBLE', doubt)
