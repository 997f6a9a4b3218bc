import { useQuery } from '@tanstack/react-query'
import { settingsQuery } from '../../features/settings/queries.ts'
import { type Clock, clockTimeOrDate } from '../../lib/format.ts'
import { atClockTime } from './order-times.ts'

/** The shop's own time zone; until it is known, the place of the clock on this desk. */
export const useShopClock = (): Clock => {
  const settings = useQuery(settingsQuery)
  const timeZone = settings.data?.locations[0]?.timeZone
  return { timeZone: timeZone ?? Intl.DateTimeFormat().resolvedOptions().timeZone }
}

/** When something of an order was, which may be long ago: "9:12 AM" or "Jan 9, 9:12 AM"; `at` for a sentence, "at 9:12 AM". */
export const useTimes = (): Record<'when' | 'at', (instant: string) => string> => {
  const clock = useShopClock()
  const now = new Date().toISOString()
  return {
    when: (instant) => clockTimeOrDate(instant, now, clock),
    at: (instant) => atClockTime(instant, now, clock),
  }
}
