import { useParams } from 'react-router'
import { problemText } from '../../../lib/problem.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { useOrderHere } from '../order/order-here.ts'
import { OrderScreen } from '../order/order-screen.tsx'

export function BayOrderRoute() {
  const { orderId = '' } = useParams()
  const order = useOrderHere(orderId)
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

// Loaded as one: apart, what both share would weigh on the first screen.
export { rowHere } from '../order/row-here.ts'
