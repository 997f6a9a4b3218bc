import { useQuery } from '@tanstack/react-query'
import { useParams } from 'react-router'
import { orderQuery } from '../../../features/ledger/order-query.ts'
import { problemText } from '../../../lib/problem.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { OrderSheet } from '../sheet/order-sheet.tsx'

export function DeskOrderRoute() {
  const { orderId = '' } = useParams()
  const order = useQuery(orderQuery(orderId))
  if (order.data !== undefined) return <OrderSheet key={orderId} order={order.data} />
  return (
    <>
      <title>Order · Bayledger desk</title>
      {order.isError ? (
        <ProblemNotice problem={problemText(order.error)} onRetry={() => void order.refetch()} />
      ) : (
        <StatusLine>Reading the order.</StatusLine>
      )}
    </>
  )
}
