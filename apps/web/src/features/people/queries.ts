import { getSession } from '@bayledger/contract/sessions'
import { listStaff } from '@bayledger/contract/staff'
import { queryOptions, useQuery } from '@tanstack/react-query'
import { call } from '../../lib/api-client.ts'

export const staffQuery = queryOptions({
  queryKey: ['staff'],
  queryFn: ({ signal }) => call(listStaff, { signal }),
  staleTime: 60_000,
})

export const sessionQuery = queryOptions({
  queryKey: ['session'],
  queryFn: ({ signal }) => call(getSession, { signal }),
  staleTime: 60_000,
})

/** Names by staff id; an unknown id yields words that say so. */
export const useStaffNames = (): ((staffId: string) => string) => {
  const staff = useQuery(staffQuery)
  const { staff: working = [], former = [] } = staff.data ?? {}
  const names = new Map([...former, ...working].map((person) => [person.staffId, person.name]))
  return (staffId) => names.get(staffId) ?? 'somebody no longer here'
}
