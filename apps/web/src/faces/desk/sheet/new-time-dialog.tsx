import { getNewTime, sendNewTime } from '@bayledger/contract/messages'
import { telephoneWords } from '@bayledger/wording/telephone'
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { refreshFloorRows } from '../../../features/floor/queries.ts'
import { draftEntry, newId } from '../../../features/ledger/draft-entry.ts'
import { catchUpOrder } from '../../../features/ledger/order-query.ts'
import { sendEntries } from '../../../features/ledger/write-entries.ts'
import { call } from '../../../lib/api-client.ts'
import { clockTimeOrDay } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { Dialog } from '../../../ui/dialog.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { useShopClock } from '../shop-clock.ts'
import type { OrderPart } from './order-part.ts'

const ways = { email: 'Send it by e-mail', text: 'Send it by text' } as const

/** What to say when it will be later, and one button: sent where the customer agreed to it, or called. */
export function NewTimeDialog({ order, onClose }: OrderPart & { onClose: () => void }) {
  const { orderId, customer, state } = order
  const clock = useShopClock()
  const client = useQueryClient()
  // Made once: however often the button is pressed on a bad network, one promise is written.
  const [entryId] = useState(newId)
  const asked = useQuery({
    queryKey: ['new-time', orderId],
    queryFn: ({ signal }) => call(getNewTime, { params: { orderId }, signal }),
    gcTime: 0,
  })
  const later = asked.data?.later ?? null
  const tell = useMutation({
    mutationFn: async (how: 'called' | 'email' | 'text') => {
      if (later === null) return
      const { promisedAt } = later
      if (how === 'called')
        await sendEntries({
          entries: [
            draftEntry(orderId, 'contact.made', { channel: 'telephone', outcome: 'reached', words: null }),
            draftEntry(orderId, 'stay.changed', { waitsHere: state.opened?.waitsHere ?? false, promisedAt }),
          ],
        })
      else await call(sendNewTime, { params: { orderId }, body: { entryId, promisedAt, channel: how } })
    },
    onSuccess: onClose,
    onSettled: async () => {
      await catchUpOrder(client, orderId)
      await refreshFloorRows(client, [orderId])
    },
  })
  return (
    <Dialog title="It will be ready later" onClose={onClose}>
      <div className="stack">
        {asked.isError ? (
          <ProblemNotice problem={problemText(asked.error)} onRetry={() => void asked.refetch()} />
        ) : null}
        {asked.isPending ? <StatusLine>Reading what to say.</StatusLine> : null}
        {asked.isSuccess && later === null ? (
          <p>It will be ready in time again. Nothing is to be said.</p>
        ) : null}
        {later === null ? null : (
          <>
            <p lang={customer.language}>{later.sentence}</p>
            <p>
              The new promise is {clockTimeOrDay(later.promisedAt, new Date().toISOString(), clock)}
              {customer.phone ? `. Telephone: ${telephoneWords(customer.phone)}` : ''}.
            </p>
            {tell.isError ? <ProblemNotice problem={problemText(tell.error)} /> : null}
            <div className="row">
              {later.channels.map((channel) => (
                <Button
                  key={channel}
                  look={channel === later.channels[0] ? 'main' : 'plain'}
                  busy={tell.isPending}
                  onClick={() => tell.mutate(channel)}
                >
                  {ways[channel]}
                </Button>
              ))}
              <Button
                look={later.channels.length === 0 ? 'main' : 'plain'}
                busy={tell.isPending}
                onClick={() => tell.mutate('called')}
              >
                Called them
              </Button>
            </div>
          </>
        )}
      </div>
    </Dialog>
  )
}
