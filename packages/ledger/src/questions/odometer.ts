import type { Distance } from '@bayledger/reckoning/quantity'
import type { OrderState } from '../state.ts'

/** The newest reading of the odometer, and at what point of the visit it was read. */
export type OdometerReading = {
  readonly distance: Distance
  readonly at: 'write-up' | 'after-our-drive' | 'hand-back'
}

/** The report is sealed before the hand-back: until then the end of our own drive is the last reading. */
export const lastOdometer = (state: OrderState): OdometerReading | null => {
  const handBack = state.handedBack?.odometer
  if (handBack) return { distance: handBack, at: 'hand-back' }
  const leaving = state.odometerLeaving
  const drive = state.drives.at(-1)
  if (leaving && !(drive && drive.written.seq > leaving.written.seq))
    return { distance: leaving.odometer, at: 'hand-back' }
  if (drive) return { distance: drive.odometerIn, at: 'after-our-drive' }
  const opened = state.opened?.odometer
  return opened ? { distance: opened, at: 'write-up' } : null
}
