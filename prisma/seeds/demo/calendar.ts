/** The demo day: Monday 12 January 2026, 11:40 at the shop, five hours behind UTC. */
export const nominalNow = Date.parse('2026-01-12T11:40:00-05:00')
export const shopOffsetMinutes = -300

const minute = 60_000
const day = 24 * 60 * minute

/** Where the demo's moments and days fall when its 11:40 is another instant. */
export type DemoCalendar = {
  /** The instant that plays 11:40 of the demo day, UTC text. */
  readonly now: string
  /** The instant that plays a time of the demo day, such as `09:12` or `09:12:30`. */
  readonly at: (clock: string) => string
  /** The same on another day of the demo's own calendar: `10:00` of `2026-01-14`. */
  readonly atOn: (nominalDay: string, clock: string) => string
  /** The day that plays a day of the demo's own calendar, such as `2026-03-02`. */
  readonly on: (nominalDay: string) => string
  /** The month that plays a month of the demo's own calendar, such as `2025-06`. */
  readonly inMonth: (nominalMonth: string) => string
}

/**
 * Shifts every date of the demo so that `now` plays its 11:40. `now` is any instant with its offset or Z; one
 * that is none throws a RangeError.
 */
export const demoCalendar = (now: string): DemoCalendar => {
  const instant = Date.parse(now)
  if (Number.isNaN(instant))
    throw new RangeError(`"${now}" is not an instant; write one such as 2026-01-12T11:40:00-05:00`)
  const text = (at: number) => new Date(at).toISOString()
  const localDay = (at: number) => Math.floor((at + shopOffsetMinutes * minute) / day)
  const shiftedDays = localDay(instant) - localDay(nominalNow)
  const on = (nominalDay: string) => text(Date.parse(nominalDay) + shiftedDays * day).slice(0, 10)
  const atOn = (nominalDay: string, clock: string) =>
    text(
      instant +
        (Date.parse(nominalDay) - Date.parse('2026-01-12')) +
        (clockMilliseconds(clock) - clockMilliseconds('11:40')),
    )
  return {
    now: text(instant),
    at: (clock) => atOn('2026-01-12', clock),
    atOn,
    on,
    inMonth: (nominalMonth) => on(`${nominalMonth}-15`).slice(0, 7),
  }
}

/** The same calendar, its times being those of another of its days. */
export const onDay = (calendar: DemoCalendar, nominalDay: string): DemoCalendar => ({
  ...calendar,
  at: (clock) => calendar.atOn(nominalDay, clock),
})

const clockMilliseconds = (clock: string): number => {
  const [hours = 0, minutes = 0, seconds = 0] = clock.split(':').map(Number)
  return ((hours * 60 + minutes) * 60 + seconds) * 1_000
}
