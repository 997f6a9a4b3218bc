import type { StaffMember } from '@bayledger/contract/identity'
import { isSoleWorker } from '@bayledger/ledger/questions/sole-worker'
import { useQuery } from '@tanstack/react-query'
import { sessionQuery, staffQuery } from '../../../features/people/queries.ts'
import type { Clock } from '../../../lib/format.ts'
import { deviceQuery } from './device-query.ts'

/** Who is signed in on this tablet; `null` before anyone is. Only `BayDoor` queries the server. */
export const useSignedIn = (): StaffMember | null =>
  useQuery({ ...sessionQuery, enabled: false }).data?.staff ?? null

/** Whether nobody else at the shop could check this person's torque; false while it is not known. */
export const useWorksAlone = (): boolean => {
  const person = useSignedIn()
  const staff = useQuery(staffQuery).data?.staff
  return (
    person !== null &&
    staff !== undefined &&
    isSoleWorker(
      { kind: 'staff', staffId: person.staffId },
      { staff: new Map(staff.map(({ staffId, roles }) => [staffId, roles])) },
    )
  )
}

/** The time zone of the place where this tablet is. */
export const useBayClock = (): Clock => ({
  timeZone:
    useQuery({ ...deviceQuery, enabled: false }).data?.location.timeZone ??
    Intl.DateTimeFormat().resolvedOptions().timeZone,
})
