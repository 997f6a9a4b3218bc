import { type Clock, clockTime, clockTimeOrDate, day } from '../../lib/format.ts'

/** "at 9:12 AM" today, else "on Jan 9, 9:12 AM". */
export function atClockTime(instant: string, now: string, clock: Clock): string {
  const said = clockTimeOrDate(instant, now, clock)
  return said === clockTime(instant, clock) ? `at ${said}` : `on ${said}`
}

/**
 * The times of a list whose oldest is first: each has its clock time, and its day where that is another than the one before it.
 * A list that begins today needs none.
 */
export function clockTimesInOrder(instants: readonly string[], now: string, clock: Clock): readonly string[] {
  return instants.map((instant, place) => {
    const before = instants[place - 1]
    if (before === undefined) return clockTimeOrDate(instant, now, clock)
    const on = day(instant, now, clock)
    if (on === day(before, now, clock)) return clockTime(instant, clock)
    return `${on === day(now, now, clock) ? 'today' : on}, ${clockTime(instant, clock)}`
  })
}
