import type { OrderState } from '../state.ts'

const settleable: ReadonlySet<string> = new Set([
  'device-clock-doubtful',
  'drive-minutes-doubtful',
  'heard-late',
])

/** Whether a person settles this doubt about an entry: when it was written, how long it took, whether it holds. */
export const isSettleable = (hold: OrderState['holds'][number], entryId: string): boolean =>
  settleable.has(hold.code) && hold.written.entryId === entryId

/**
 * Entries that a clock contradicts, or that their writer wrote before hearing what others had written; until a person
 * settles each.
 */
export const openHolds = ({ holds }: OrderState): OrderState['holds'] =>
  holds.filter((hold) => isSettleable(hold, hold.written.entryId))
