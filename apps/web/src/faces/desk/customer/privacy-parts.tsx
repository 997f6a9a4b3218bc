import { useQuery } from '@tanstack/react-query'
import { sessionQuery } from '../../../features/people/queries.ts'
import { ErasurePart } from './erasure-part.tsx'
import { HoldsPart } from './holds-part.tsx'

/** What an owner, and of holds a manager, does with a person's data. */
export function PrivacyParts({ customerId }: { customerId: string }) {
  const session = useQuery(sessionQuery)
  const roles = session.data?.staff.roles ?? []
  const isOwner = roles.includes('owner')
  return (
    <>
      {isOwner || roles.includes('manager') ? <HoldsPart customerId={customerId} mayLift={isOwner} /> : null}
      {isOwner ? <ErasurePart customerId={customerId} /> : null}
    </>
  )
}
