import type { StaffMember } from '@bayledger/contract/identity'
import type { Session } from '@bayledger/contract/sessions'
import { queryOptions } from '@tanstack/react-query'
import { tabletPins } from '../../../ledger/pin-checks.ts'

/** Who can sign in on this tablet without the server, by name. */
export const knownHereQuery = queryOptions({
  queryKey: ['known-here'],
  queryFn: async (): Promise<StaffMember[]> => {
    const people = (await tabletPins.everyone()).map((beside) => (beside as Session).staff)
    return people.toSorted((one, other) => one.name.localeCompare(other.name))
  },
  retry: false,
})
