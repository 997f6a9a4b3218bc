import { revokeLink } from '@bayledger/contract/links'
import {
  type AskedPurpose,
  type MessageChannel,
  type MessageChoice,
  putMessageChoice,
  sendMessage,
  withdrawMessage,
} from '@bayledger/contract/messages'
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { newId } from '../../../features/ledger/draft-entry.ts'
import { orderKey } from '../../../features/ledger/order-query.ts'
import { messageWords } from '../../../features/links/message-words.ts'
import { linksQuery } from '../../../features/links/queries.ts'
import { useMessages } from '../../../features/links/use-messages.ts'
import { call } from '../../../lib/api-client.ts'
import { clockTimeOrDay } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { CheckGroup } from '../../../ui/choice-group.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { useShopClock } from '../shop-clock.ts'
import { LinkDialog } from './link-dialog.tsx'
import type { OrderPart } from './order-part.ts'

/** What was sent to the customer and what became of it, the links to their page, and what they want to be sent. */
export function MessagesPart({ order }: OrderPart) {
  const { data } = useMessages(order.orderId)
  if (order.state.diagnosis?.confirmed == null || data === undefined) return null
  return (
    <Section title="Messages and links" id="messages">
      <div className="stack">
        {data.linksOpenElsewhere ? null : (
          <p>
            Links open on this machine only. Whoever runs the server sets PUBLIC_ADDRESS to the address by
            which a customer’s phone reaches it.
          </p>
        )}
        {data.carriers.email ? null : (
          <p>No mail server is set, so that no e-mail goes out. Print the link or show its code.</p>
        )}
        <SendButtons order={order} goesAt={data.goesAt} hasTexts={data.carriers.text} />
        <MessageList order={order} />
        <LinkList order={order} />
        <Wishes order={order} choices={data.choices} />
      </div>
    </Section>
  )
}

/** Does something to the order's messages and reads them again, whatever came of it. */
const useChange = <Given,>(orderId: string, change: (given: Given) => Promise<unknown>) => {
  const client = useQueryClient()
  return useMutation({
    mutationFn: change,
    onSettled: () => client.invalidateQueries({ queryKey: orderKey(orderId) }),
  })
}

type SendProps = OrderPart & { goesAt: string; hasTexts: boolean }

function SendButtons({ order, goesAt, hasTexts }: SendProps) {
  const { orderId, state } = order
  const clock = useShopClock()
  const now = new Date().toISOString()
  const isQuiet = Date.parse(goesAt) > Date.parse(now) + 60_000
  const [inQuietHours, setInQuietHours] = useState(false)
  const [linking, setLinking] = useState(false)
  const purpose = state.reports.length > 0 ? 'report' : state.estimates.length > 0 ? 'estimate' : null
  const send = useChange(orderId, (channel: MessageChannel) =>
    call(sendMessage, {
      params: { orderId },
      body: { entryId: newId(), purpose: purpose ?? 'estimate', channel, inQuietHours },
    }),
  )
  return (
    <>
      {isQuiet ? (
        <CheckGroup
          label={`The quiet hours hold: a message goes at ${clockTimeOrDay(goesAt, now, clock)}`}
          options={[{ value: 'now', label: 'Send it now; the customer waits for it' }]}
          values={inQuietHours ? ['now'] : []}
          onChange={(values) => setInQuietHours(values.length > 0)}
        />
      ) : null}
      {send.isError ? <ProblemNotice problem={problemText(send.error)} /> : null}
      <div className="row">
        {purpose === null ? null : (
          <Button busy={send.isPending} onClick={() => send.mutate('email')}>
            {purpose === 'report' ? 'E-mail the report' : 'E-mail the estimate'}
          </Button>
        )}
        {purpose === null || !hasTexts ? null : (
          <Button busy={send.isPending} onClick={() => send.mutate('text')}>
            {purpose === 'report' ? 'Text the report' : 'Text the estimate'}
          </Button>
        )}
        <Button onClick={() => setLinking(true)}>Link or code to print</Button>
      </div>
      {linking ? (
        <LinkDialog
          order={order}
          issued={purpose === 'estimate' ? (state.estimates.at(-1) ?? null) : null}
          onClose={() => setLinking(false)}
        />
      ) : null}
    </>
  )
}

function MessageList({ order: { orderId } }: OrderPart) {
  const clock = useShopClock()
  const { data } = useMessages(orderId)
  const withdraw = useChange(orderId, (messageId: string) =>
    call(withdrawMessage, { params: { orderId, messageId } }),
  )
  const now = new Date().toISOString()
  return (
    <>
      {withdraw.isError ? <ProblemNotice problem={problemText(withdraw.error)} /> : null}
      {data?.messages.map((message) => (
        <div key={message.messageId} className="row">
          <p>{messageWords(message, now, clock)}</p>
          {message.state === 'waiting' ? (
            <Button busy={withdraw.isPending} onClick={() => withdraw.mutate(message.messageId)}>
              Withdraw this message
            </Button>
          ) : null}
        </div>
      ))}
    </>
  )
}

function LinkList({ order: { orderId } }: OrderPart) {
  const clock = useShopClock()
  const links = useQuery(linksQuery(orderId))
  const revoke = useChange(orderId, (linkId: string) => call(revokeLink, { params: { orderId, linkId } }))
  const now = new Date().toISOString()
  const open = links.data?.links.filter(({ revokedAt, expiresAt }) => revokedAt === null && expiresAt > now)
  return (
    <>
      {revoke.isError ? <ProblemNotice problem={problemText(revoke.error)} /> : null}
      {open?.map(({ linkId, createdAt, expiresAt, openedAt }) => (
        <div key={linkId} className="row">
          <p>
            Link of {clockTimeOrDay(createdAt, now, clock)},{' '}
            {openedAt[0] === undefined
              ? 'not opened yet'
              : `opened ${clockTimeOrDay(openedAt[0], now, clock)}`}
            , good until {clockTimeOrDay(expiresAt, now, clock)}.
          </p>
          <Button busy={revoke.isPending} onClick={() => revoke.mutate(linkId)}>
            Withdraw this link
          </Button>
        </div>
      ))}
    </>
  )
}

const wishes: readonly { readonly value: AskedPurpose; readonly label: string }[] = [
  { value: 'job', label: 'the estimate and the report' },
  { value: 'retorque', label: 'a reminder of the torque check' },
  { value: 'deferred', label: 'a reminder of work put off' },
]

type Choices = readonly MessageChoice[]

function Wishes({ order: { orderId, customer }, choices }: OrderPart & { choices: Choices }) {
  const choose = useChange(orderId, (choice: Choices[number]) =>
    call(putMessageChoice, { params: { customerId: customer.customerId }, body: choice }),
  )
  const agreed = choices.filter(({ channel, allowed }) => channel === 'email' && allowed)
  const values = agreed.map(({ purpose }) => purpose)
  return (
    <>
      {choose.isError ? <ProblemNotice problem={problemText(choose.error)} /> : null}
      <CheckGroup
        label="The customer agrees to e-mail with"
        options={wishes}
        values={values}
        onChange={(next) => {
          const changed = wishes.find(({ value }) => next.includes(value) !== values.includes(value))
          if (changed)
            choose.mutate({
              purpose: changed.value,
              channel: 'email',
              allowed: next.includes(changed.value),
            })
        }}
      />
    </>
  )
}
