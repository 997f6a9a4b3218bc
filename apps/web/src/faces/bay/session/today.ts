import { type CalendarDay, readCalendarDay } from '@bayledger/reckoning/units/calendar-day'
import { useQuery } from '@tanstack/react-query'
import { sessionQuery } from '../../../features/people/queries.ts'

/** The day as the server had it at the sign-in, YYYY-MM-DD in UTC, as the ledger compares it. */
export const useToday = (): string =>
  (useQuery({ ...sessionQuery, enabled: false }).data?.now ?? new Date().toISOString()).slice(0, 10)

/** The same day, as tires are dated by it. */
export const useCalendarDay = (): CalendarDay => {
  const read = readCalendarDay(useToday())
  if (!read.ok) throw new Error(`The server's day cannot be read: ${read.found}.`)
  return read.value
}
