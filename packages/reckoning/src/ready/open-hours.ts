import { dayIn, instantOf } from './zoned-time.ts'

/** Seven days from Monday; `null` where it is closed. Times as "07:30". */
export type WeekHours = readonly ({ readonly opens: string; readonly closes: string } | null)[]

/** A stretch in which a place works, in milliseconds since 1970. */
export type OpenStretch = { readonly from: number; readonly until: number }

const dayMs = 86_400_000

/** Two weeks hold the longest holiday that a promise reaches over. Our choice, no source. */
const daysAhead = 14

/**
 * When a place is open in the next two weeks, by its own clock, from the day of `from` on. A place without any hours on file
 * is taken to be always open, since nothing else is known.
 *
 * @units Milliseconds since 1970; clock times of the place's zone.
 * @source The place's hours, as its owner entered them.
 */
export const openStretches = (hours: WeekHours, timeZone: string, from: number): readonly OpenStretch[] => {
  if (hours.every((day) => day === null)) return [{ from: 0, until: Number.MAX_SAFE_INTEGER }]
  // Noon, so that neither change of the clocks leads to a day twice or past one.
  const noon = Date.parse(`${dayIn(new Date(from), timeZone)}T12:00:00Z`)
  return Array.from({ length: daysAhead }, (_, ahead) => new Date(noon + ahead * dayMs)).flatMap((date) => {
    const open = hours[(date.getUTCDay() + 6) % 7]
    const day = date.toISOString().slice(0, 10)
    const opens = open ? instantOf(day, open.opens, timeZone) : null
    const closes = open ? instantOf(day, open.closes, timeZone) : null
    return opens === null || closes === null ? [] : [{ from: Date.parse(opens), until: Date.parse(closes) }]
  })
}

/**
 * The moment at which work of some seconds that begins at `from` is done, if it is done only while the place is open: what is
 * not ready at closing goes on when it opens next. `null`: not within the stretches that are known.
 *
 * @units Milliseconds since 1970; seconds of work.
 * @source This program's own rule.
 */
export const doneAt = (from: number, seconds: number, open: readonly OpenStretch[]): number | null => {
  let left = seconds * 1_000
  for (const stretch of open) {
    const begins = Math.max(from, stretch.from)
    const room = stretch.until - begins
    if (room <= 0) continue
    if (left <= room) return begins + left
    left -= room
  }
  return null
}
