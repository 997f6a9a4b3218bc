/**
 * The day in a time zone at an instant: "2026-01-12".
 *
 * @source The IANA time zone database, as the platform has it.
 */
export const dayIn = (instant: Date, timeZone: string): string => shownIn(instant, timeZone).slice(0, 10)

/**
 * The instant at which clocks in a zone show this day and time ("2026-01-12", "14:30"); `null` if either cannot be read. Where
 * clocks skip the hour, it is the hour after it; where they show it twice, the first.
 *
 * @source The IANA time zone database, as the platform has it.
 */
export const instantOf = (day: string, time: string, timeZone: string): string | null => {
  const wall = Date.parse(`${day}T${time}:00Z`)
  if (!/^\d{4}-\d{2}-\d{2}$/.test(day) || Number.isNaN(wall)) return null
  // An offset differs by at most an hour or two around a change: one of the two guesses is right, or the hour is skipped.
  const guesses = [wall - 86_400_000, wall + 86_400_000].map((near) => wall - offsetAt(near, timeZone))
  const right = guesses.filter((guess) => guess + offsetAt(guess, timeZone) === wall)
  return new Date(right.length > 0 ? Math.min(...right) : Math.max(...guesses)).toISOString()
}

/** By how much clocks in the zone are ahead of UTC at an instant, ms. */
const offsetAt = (instant: number, timeZone: string): number => {
  const shown = shownIn(new Date(instant), timeZone)
  return Date.parse(`${shown.replace(' ', 'T')}Z`) - Math.floor(instant / 1000) * 1000
}

/** Making one takes longer than using it a thousand times. */
const formats = new Map<string, Intl.DateTimeFormat>()

/** "2026-01-12 14:30:00": Swedish writes a date and a time as ISO 8601 does, but for the zeros of a year that is half typed. */
const shownIn = (instant: Date, timeZone: string): string =>
  formatOf(timeZone)
    .format(instant)
    .replace(/^\d+/, (year) => year.padStart(4, '0'))

const formatOf = (timeZone: string): Intl.DateTimeFormat => {
  const known = formats.get(timeZone)
  if (known) return known
  const made = new Intl.DateTimeFormat('sv-SE', { timeZone, dateStyle: 'short', timeStyle: 'medium' })
  formats.set(timeZone, made)
  return made
}
