import { copyOwnData, listOwnDataCopies } from '@bayledger/contract/own-data'
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { sessionQuery } from '../../../features/people/queries.ts'
import { call } from '../../../lib/api-client.ts'
import { clockTimeOrDay } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { useShopClock } from '../shop-clock.ts'

/** For an owner: a copy of all that is kept of the customer, for the customer who asks for it. */
export function OwnDataPart({ customerId }: { customerId: string }) {
  const session = useQuery(sessionQuery)
  return session.data?.staff.roles.includes('owner') ? <Copies customerId={customerId} /> : null
}

function Copies({ customerId }: { customerId: string }) {
  const client = useQueryClient()
  const clock = useShopClock()
  const queryKey = ['customer', customerId, 'own-data']
  const made = useQuery({
    queryKey,
    queryFn: ({ signal }) => call(listOwnDataCopies, { params: { customerId }, signal }),
    staleTime: 0,
  })
  const copy = useMutation({
    mutationFn: () => call(copyOwnData, { params: { customerId } }),
    onSuccess: save,
    onSettled: () => client.invalidateQueries({ queryKey }),
  })
  const now = new Date().toISOString()
  return (
    <Section title="The customer’s own data">
      <div className="stack">
        <p>
          A copy of all that is kept of this customer, as one ZIP file: cards, vehicles, what they agreed to,
          messages, links, write-ups that were begun, and every order with its words, names, sums, photos and
          reports. It holds nothing of who had a vehicle before or has it now. Check who asks before you hand
          it out.
        </p>
        {made.isError ? <ProblemNotice problem={problemText(made.error)} /> : null}
        {copy.isError ? <ProblemNotice problem={problemText(copy.error)} /> : null}
        <div className="row">
          <Button busy={copy.isPending} onClick={() => copy.mutate()}>
            Write a copy
          </Button>
        </div>
        {made.data?.copies.map(({ at, by }) => (
          <p key={at} className="quiet">{`A copy was made ${clockTimeOrDay(at, now, clock)}, by ${by}.`}</p>
        ))}
      </div>
    </Section>
  )
}

const save = (file: Blob): void => {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(file)
  link.download = 'customer-data.zip'
  link.click()
  URL.revokeObjectURL(link.href)
}
