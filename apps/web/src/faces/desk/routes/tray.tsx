import { listRefusedEntries, settleRefusedEntry } from '@bayledger/contract/entries'
import { queryOptions, useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { Link } from 'react-router'
import { kindWords } from '../../../features/ledger/entry-words.ts'
import { useStaffNames } from '../../../features/people/queries.ts'
import { call } from '../../../lib/api-client.ts'
import { deskOrderPath } from '../../../lib/paths.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { useTimes } from '../shop-clock.ts'
import './tray.css'

const trayQuery = queryOptions({
  queryKey: ['orders', 'refused'],
  queryFn: ({ signal }) => call(listRefusedEntries, { signal }),
})

/** Entries that the ledger refused, with the reason, so that nothing is lost and a person decides what to do. */
export function TrayRoute() {
  const tray = useQuery(trayQuery)
  const { when } = useTimes()
  const nameOf = useStaffNames()
  const client = useQueryClient()
  const settle = useMutation({
    mutationFn: (entryId: string) => call(settleRefusedEntry, { params: { entryId } }),
    onSettled: () => client.invalidateQueries({ queryKey: trayQuery.queryKey }),
  })
  const refused = tray.data?.refused ?? []
  return (
    <>
      <title>Entries not accepted · Bayledger desk</title>
      <h1>Entries not accepted</h1>
      {tray.isError ? (
        <ProblemNotice problem={problemText(tray.error)} onRetry={() => void tray.refetch()} />
      ) : null}
      {settle.isError ? <ProblemNotice problem={problemText(settle.error)} /> : null}
      {tray.data !== undefined && refused.length === 0 ? (
        <p>Nothing was refused that is not settled.</p>
      ) : null}
      {tray.data?.isWhole === false ? (
        <p>These are the oldest {refused.length}. When you settle one, the next one appears.</p>
      ) : null}
      <ul className="tray">
        {refused.map((entry) => (
          <li key={entry.id} className="tray-line">
            <p>
              <strong>{kindWords(entry.kind)}</strong>, {when(entry.receivedAt)}
              {entry.writtenBy.kind === 'staff'
                ? `, ${nameOf(entry.writtenBy.staffId)}`
                : ', by the customer’s link'}{' '}
              · <Link to={deskOrderPath(entry.orderId)}>{entry.orderNumber ?? 'the order'}</Link>
            </p>
            <p>{entry.words}</p>
            <Button busy={settle.isPending} onClick={() => settle.mutate(entry.id)}>
              Settled
            </Button>
          </li>
        ))}
      </ul>
    </>
  )
}
