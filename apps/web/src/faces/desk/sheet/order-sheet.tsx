import { lazy, Suspense } from 'react'
import type { ReadOrder } from '../../../ledger/order.ts'
import { Sentence } from '../../../ui/sentence.tsx'
import { AsReceived } from './as-received.tsx'
import { ChooseSheet } from './choose-sheet.tsx'
import { ComebackPart } from './comeback/lazy-comeback-part.tsx'
import { ComplaintPart } from './complaint-part.tsx'
import { EstimatePart } from './estimate-part.tsx'
import { FiguresPart } from './figures-part.tsx'
import { FindingsPart } from './findings-part.tsx'
import { Margin } from './margin.tsx'
import { OrderHead } from './order-head.tsx'
import { ParkedPart } from './parked-part.tsx'
import { PhotosPart } from './photos-part.tsx'
import { ReportPart } from './report-part.tsx'
import { WorkPart } from './work-part.tsx'
import './order-sheet.css'

/** Below everything else, so that it may come a moment later. */
const MessagesPart = lazy(async () => {
  const { MessagesPart: part } = await import('./messages-part.tsx')
  return { default: part }
})

/** One order on one page that scrolls, with its ledger along the right margin. */
export function OrderSheet({ order }: { order: ReadOrder }) {
  return (
    <div className="order">
      <title>{`${order.number} · Bayledger desk`}</title>
      <div className="order-parts">
        <OrderHead order={order} />
        {order.readOnly ? <Sentence>{order.readOnly.words}</Sentence> : null}
        <ComplaintPart order={order} />
        <ChooseSheet order={order} />
        <AsReceived order={order} />
        <FiguresPart order={order} />
        <PhotosPart order={order} />
        <ParkedPart order={order} />
        <FindingsPart order={order} />
        <ComebackPart order={order} />
        <EstimatePart order={order} />
        <WorkPart order={order} />
        <ReportPart order={order} />
        <Suspense>
          <MessagesPart order={order} />
        </Suspense>
      </div>
      <Margin order={order} />
    </div>
  )
}
