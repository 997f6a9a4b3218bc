import type { Distance } from '@bayledger/reckoning/quantity'
import {
  isConfirmable,
  judgeOdometer,
  type OdometerBefore,
  type OdometerVerdict,
} from '@bayledger/reckoning/vehicle/judge-odometer'
import type { OrderState, Written } from '../state.ts'

/** The newest reading of the odometer, and at what point of the visit it was read. */
export type OdometerReading = {
  readonly distance: Distance
  readonly at: 'write-up' | 'after-our-drive' | 'hand-back'
  /** It was unlikely, and somebody read it a second time. */
  readonly confirmed: boolean
  readonly written: Written
}

/** The report is sealed before the hand-back: until then the end of our own drive is the last reading. */
export const lastOdometer = (state: OrderState): OdometerReading | null => {
  const { opened, handedBack, odometerLeaving: leaving } = state
  if (handedBack?.odometer)
    return {
      distance: handedBack.odometer,
      at: 'hand-back',
      confirmed: handedBack.odometerConfirmed,
      written: handedBack.written,
    }
  const drive = state.drives.at(-1)
  if (leaving && !(drive && drive.written.seq > leaving.written.seq))
    return {
      distance: leaving.odometer,
      at: 'hand-back',
      confirmed: leaving.confirmed,
      written: leaving.written,
    }
  if (drive)
    return {
      distance: drive.odometerIn,
      at: 'after-our-drive',
      confirmed: drive.odometerConfirmed,
      written: drive.written,
    }
  return opened?.odometer
    ? {
        distance: opened.odometer,
        at: 'write-up',
        confirmed: opened.odometerConfirmed,
        written: opened.written,
      }
    : null
}

/** What a vehicle's odometer read last at an earlier visit of this shop. `readAt`: UTC text. */
export type EarlierOdometer = { readonly distance: Distance; readonly readAt: string }

/** Why a reading is not taken as it is; `null` where it may be. `before`: what it is compared with. */
export type OdometerDoubt = {
  readonly why: Exclude<OdometerVerdict, 'plausible'> | 'beyond-drive'
  readonly read: Distance
  readonly before: Distance | null
  /** Of an earlier visit, in whole days rounded up; `null`: of this visit. */
  readonly daysAgo: number | null
}

/** Judges one reading; a confirmable one is taken once it was read a second time. */
export const odometerDoubt = (
  read: Distance,
  before: OdometerBefore | null,
  confirmed: boolean,
): OdometerDoubt | null => {
  const why = judgeOdometer(read, before)
  return why === 'plausible' || (confirmed && isConfirmable(why))
    ? null
    : { why, read, before: before?.distance ?? null, daysAgo: before?.daysAgo ?? null }
}

/** What the odometer of a vehicle that comes is compared with. `now`: UTC text. */
export const beforeArrival = (earlier: EarlierOdometer | null, now: string): OdometerBefore | null =>
  earlier && {
    distance: earlier.distance,
    daysAgo: Math.max(0, Math.ceil((Date.parse(now) - Date.parse(earlier.readAt)) / dayMs)),
  }

/** What a later reading is compared with: the last one of this visit or, where there is none, of an earlier visit. */
export const beforeLeaving = (
  state: OrderState,
  earlier: EarlierOdometer | null,
  now: string,
): OdometerBefore | null => {
  const last = lastOdometer(state)
  return last ? { distance: last.distance, daysAgo: null } : beforeArrival(earlier, now)
}

/** Judges the odometer as the vehicle came, written again: what our own drives read afterward cannot be less. */
export const arrivalOdometerDoubt = (
  state: OrderState,
  read: Distance,
  before: OdometerBefore | null,
  confirmed: boolean,
): OdometerDoubt | null => {
  const later = state.drives[0]?.odometerOut ?? state.odometerLeaving?.odometer
  if (later && judgeOdometer(later, { distance: read, daysAgo: null }) === 'backwards')
    return { why: 'beyond-drive', read, before: later, daysAgo: null }
  return odometerDoubt(read, before, confirmed)
}

/**
 * Judges the readings of a drive by what this order holds, since a tablet without a network knows no earlier visit. Less
 * than before counts here once it was read twice: the reading at the desk may have been wrong.
 */
export const driveOdometerDoubt = (
  state: OrderState,
  { odometerOut, odometerIn }: { readonly odometerOut: Distance; readonly odometerIn: Distance },
  confirmed: boolean,
): OdometerDoubt | null => {
  const last = lastOdometer(state)
  const doubt =
    odometerDoubt(odometerOut, last && { distance: last.distance, daysAgo: null }, false) ??
    odometerDoubt(odometerIn, { distance: odometerOut, daysAgo: null }, false)
  return confirmed && doubt?.why !== 'impossible' ? null : doubt
}

const dayMs = 86_400_000
