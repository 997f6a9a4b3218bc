import { useQuery } from '@tanstack/react-query'
import { useCallback } from 'react'
import { useParams } from 'react-router'
import { type OrderReply, orderQuery, readOrder } from '../../../features/ledger/order-query.ts'
import { problemText } from '../../../lib/problem.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { OrderScreen } from '../order/order-screen.tsx'
import { unsentOf, useOutbox } from '../record/bay-outbox.ts'

export function BayOrderRoute() {
  const { orderId = '' } = useParams()
  const { onTop } = useOutbox()
  const select = useCallback((reply: OrderReply) => readOrder(reply, unsentOf(onTop, reply)), [onTop])
  const order = useQuery({ ...orderQuery(orderId), select })
  if (order.data === undefined)
    return (
      <main className="bay-step">
        <title>Order · Bayledger bay</title>
        {order.isError ? (
          <ProblemNotice problem={problemText(order.error)} onRetry={() => void order.refetch()} />
        ) : (
          <StatusLine>Opening the order …</StatusLine>
        )}
      </main>
    )
  return (
    <>
      <title>{`${order.data.number} · Bayledger bay`}</title>
      <OrderScreen key={orderId} order={order.data} />
    </>
  )
}
