import type { StaffMember } from '@bayledger/contract/identity'
import { useQuery } from '@tanstack/react-query'
import { sessionQuery } from '../../../features/people/queries.ts'
import type { Clock } from '../../../lib/format.ts'
import { deviceQuery } from './device-query.ts'

/** Who is signed in on this tablet; `null` before anyone is. Only `BayDoor` queries the server. */
export const useSignedIn = (): StaffMember | null =>
  useQuery({ ...sessionQuery, enabled: false }).data?.staff ?? null

/** The time zone of the place where this tablet is. */
export const useBayClock = (): Clock => ({
  timeZone:
    useQuery({ ...deviceQuery, enabled: false }).data?.location.timeZone ??
    Intl.DateTimeFormat().resolvedOptions().timeZone,
})
