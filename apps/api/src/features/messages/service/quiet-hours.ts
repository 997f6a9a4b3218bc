const minutesOf = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5))

const minutesAt = (at: Date, timeZone: string): number =>
  minutesOf(
    new Intl.DateTimeFormat('en-GB', {
      timeZone,
      hour: '2-digit',
      minute: '2-digit',
      hourCycle: 'h23',
    }).format(at),
  )

const dayMinutes = 24 * 60

const isWithin = (minutes: number, begin: number, end: number): boolean =>
  begin <= end ? minutes >= begin && minutes < end : minutes >= begin || minutes < end

/**
 * When the quiet hours that hold at an instant end where the place is; `null` where none hold. `hours` as 21:00-08:00: no
 * message goes from the first time of day to the second, over midnight where the first is later.
 */
export const quietUntil = (at: Date, timeZone: string, hours: string | null): Date | null => {
  const [from, to] = hours?.split('-') ?? []
  if (from === undefined || to === undefined) return null
  const end = minutesOf(to)
  if (!isWithin(minutesAt(at, timeZone), minutesOf(from), end)) return null
  const minute = new Date(Math.floor(at.getTime() / 60_000) * 60_000)
  const left = (end - minutesAt(minute, timeZone) + dayMinutes) % dayMinutes
  const then = new Date(minute.getTime() + left * 60_000)
  // A night on which the clock changes is an hour longer or shorter.
  const off = ((minutesAt(then, timeZone) - end + dayMinutes * 1.5) % dayMinutes) - dayMinutes / 2
  return new Date(then.getTime() - off * 60_000)
}
