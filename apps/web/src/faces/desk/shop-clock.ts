import { useQuery } from '@tanstack/react-query'
import { settingsQuery } from '../../features/settings/queries.ts'
import type { Clock } from '../../lib/format.ts'

/** The shop's own time zone; until it is known, the place of the clock on this desk. */
export const useShopClock = (): Clock => {
  const settings = useQuery(settingsQuery)
  const timeZone = settings.data?.locations[0]?.timeZone
  return { timeZone: timeZone ?? Intl.DateTimeFormat().resolvedOptions().timeZone }
}
