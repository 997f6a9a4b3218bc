import { useQuery } from '@tanstack/react-query'
import { useParams } from 'react-router'
import { orderQuery } from '../../../features/ledger/order-query.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import type { OrderPart } from '../sheet/order-part.ts'
import { PrintedFloor } from './printed-floor.tsx'
import { Receipt } from './receipt.tsx'
import { WheelTags } from './wheel-tags.tsx'
import { WorkSheet } from './work-sheet.tsx'
import './print.css'

const ofOrder: Readonly<Record<string, (part: OrderPart) => React.ReactNode>> = {
  tags: WheelTags,
  work: WorkSheet,
  receipt: Receipt,
}

/** Pages for paper: the floor list, and of an order its wheel tags, its work sheet and its receipt. */
export function PrintRoute() {
  const { what = '', orderId } = useParams()
  return (
    <main className="paper">
      <title>To print · Bayledger desk</title>
      <p className="paper-tools">
        <Button look="main" onClick={() => window.print()}>
          Print it
        </Button>
      </p>
      {orderId === undefined ? <PrintedFloor /> : <OfOrder what={what} orderId={orderId} />}
    </main>
  )
}

function OfOrder({ what, orderId }: { what: string; orderId: string }) {
  const order = useQuery(orderQuery(orderId))
  const Page = ofOrder[what]
  if (Page === undefined) return <p>There is no such page to print.</p>
  if (order.data !== undefined) return <Page order={order.data} />
  return order.isError ? (
    <ProblemNotice problem={problemText(order.error)} onRetry={() => void order.refetch()} />
  ) : null
}
