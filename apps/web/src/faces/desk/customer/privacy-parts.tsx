import { useQuery } from '@tanstack/react-query'
import { sessionQuery } from '../../../features/people/queries.ts'
import { Section } from '../../../ui/section.tsx'
import { LegalHolds } from '../records/legal-holds.tsx'
import { ErasurePart } from './erasure-part.tsx'

/** What an owner, and of holds a manager, does with a person's data. */
export function PrivacyParts({ customerId }: { customerId: string }) {
  const session = useQuery(sessionQuery)
  const roles = session.data?.staff.roles ?? []
  const isOwner = roles.includes('owner')
  return (
    <>
      {isOwner || roles.includes('manager') ? (
        <Section title="Legal hold">
          <LegalHolds held={{ subject: 'customer', subjectId: customerId, customerId }} mayLift={isOwner} />
        </Section>
      ) : null}
      {isOwner ? <ErasurePart customerId={customerId} /> : null}
    </>
  )
}
