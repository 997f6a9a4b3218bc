import type { OrderState } from '../state.ts'

/** Whether a hold is the doubt about the time at which an entry was written. */
export const isClockHold = (hold: OrderState['holds'][number], entryId: string): boolean =>
  hold.code === 'device-clock-doubtful' && hold.written.entryId === entryId

/** Entries whose device had a time far from the server's, until a person has settled each. */
export const clockHolds = ({ holds }: OrderState): OrderState['holds'] =>
  holds.filter((hold) => isClockHold(hold, hold.written.entryId))
