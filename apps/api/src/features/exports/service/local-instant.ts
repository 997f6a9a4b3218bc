const clocks = new Map<string, Intl.DateTimeFormat>()

const clockOf = (timeZone: string): Intl.DateTimeFormat => {
  const known = clocks.get(timeZone)
  if (known) return known
  const made = new Intl.DateTimeFormat('en-US', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    second: '2-digit',
    timeZoneName: 'longOffset',
  })
  clocks.set(timeZone, made)
  return made
}

/**
 * An instant by a place's clock with what that clock is from UTC, as 2026-03-08T03:05:00-04:00 (RFC 3339): so an hour that comes
 * twice when summer time ends is not doubtful.
 */
export const localInstant = (instant: Date | string, timeZone: string): string => {
  const parts = new Map(
    clockOf(timeZone)
      .formatToParts(new Date(instant))
      .map(({ type, value }) => [type, value]),
  )
  const part = (type: Intl.DateTimeFormatPartTypes) => parts.get(type) ?? ''
  const offset = part('timeZoneName').replace('GMT', '') || '+00:00'
  return `${part('year')}-${part('month')}-${part('day')}T${part('hour')}:${part('minute')}:${part('second')}${offset}`
}
