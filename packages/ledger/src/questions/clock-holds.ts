import type { OrderState } from '../state.ts'

const ofTheClock: ReadonlySet<string> = new Set(['device-clock-doubtful', 'drive-minutes-doubtful'])

/** Whether a hold is the doubt about the time at which an entry was written, or about the minutes that it says. */
export const isClockHold = (hold: OrderState['holds'][number], entryId: string): boolean =>
  ofTheClock.has(hold.code) && hold.written.entryId === entryId

/** Entries that a clock contradicts: the server's the device's, or any the minutes of a drive; until a person settles each. */
export const clockHolds = ({ holds }: OrderState): OrderState['holds'] =>
  holds.filter((hold) => isClockHold(hold, hold.written.entryId))
