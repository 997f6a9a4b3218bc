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
    onSuccess: ({ csv, ...rest }) => {
      save(JSON.stringify(rest, null, 2), 'application/json', 'customer-data.json')
      save(csv, 'text/csv', 'customer-data.csv')
    },
    onSettled: () => client.invalidateQueries({ queryKey }),
  })
  const now = new Date().toISOString()
  return (
    <Section title="The customer’s own data">
      <div className="stack">
        <p>
          A copy of all that is kept of this customer: cards, vehicles, what they agreed to, messages, links,
          and every order with its words, names, sums and photos listed. It holds nothing of who had a vehicle
          before or has it now. Check who asks before you hand it out.
        </p>
        {made.isError ? <ProblemNotice problem={problemText(made.error)} /> : null}
        {copy.isError ? <ProblemNotice problem={problemText(copy.error)} /> : null}
        <div className="row">
          <Button busy={copy.isPending} onClick={() => copy.mutate()}>
            Write a copy as JSON and CSV
          </Button>
        </div>
        {made.data?.copies.map(({ at, by }) => (
          <p key={at} className="quiet">{`A copy was made ${clockTimeOrDay(at, now, clock)}, by ${by}.`}</p>
        ))}
      </div>
    </Section>
  )
}

const save = (text: string, type: string, name: string): void => {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([text], { type }))
  link.download = name
  link.click()
  URL.revokeObjectURL(link.href)
}
