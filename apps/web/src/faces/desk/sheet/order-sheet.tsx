import { nextMoves } from '@bayledger/ledger/questions/moves'
import { moves } from '@bayledger/wording/en/moves'
import { languageNames } from '@bayledger/wording/language-names'
import { moveWords } from '@bayledger/wording/moves'
import { telephoneWords } from '@bayledger/wording/telephone'
import { useQuery } from '@tanstack/react-query'
import { lazy, Suspense, useState } from 'react'
import { odometerWords } from '../../../features/ledger/odometer-words.ts'
import { linksQuery } from '../../../features/links/queries.ts'
import type { ReadOrder } from '../../../ledger/order.ts'
import { ageMinutes, clockTime, minutes } from '../../../lib/format.ts'
import { Button } from '../../../ui/button.tsx'

import { Sentence } from '../../../ui/sentence.tsx'
import { useShopClock } from '../shop-clock.ts'
import { AsReceived } from './as-received.tsx'
import { ChooseSheet } from './choose-sheet.tsx'
import { ComplaintPart } from './complaint-part.tsx'
import { EditCustomer, EditVehicle } from './edit-dialogs.tsx'
import { EditStay } from './edit-stay.tsx'
import { EndOrder } from './end-order.tsx'
import { EstimatePart } from './estimate-part.tsx'
import { FiguresPart } from './figures-part.tsx'
import { FindingsPart } from './findings-part.tsx'
import { Margin } from './margin.tsx'
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

function OrderHead({ order }: { order: ReadOrder }) {
  const clock = useShopClock()
  const { vehicle, customer, state } = order
  const now = new Date().toISOString()
  const odometer = state.opened?.odometer
  const [editing, setEditing] = useState<'customer' | 'vehicle' | 'stay' | 'end' | null>(null)
  return (
    <header className="order-head">
      <h1>
        {vehicle.description}
        {vehicle.color === null ? '' : `, ${vehicle.color}`} · {customer.name}
      </h1>
      <p className="quiet">
        {order.number} · <span className="exact">{vehicle.plate ?? 'no plate'}</span>
        {vehicle.vin === null ? '' : ' · VIN '}
        <span className="exact">{vehicle.vin ?? ''}</span>
        {odometer
          ? ` · ${odometerWords(odometer, state.opened?.odometerConfirmed ?? false)}`
          : ' · odometer not read'}
        {customer.phone ? ` · ${telephoneWords(customer.phone)}` : ''}
        {customer.language === 'en' ? '' : ` · ${languageNames[customer.language]}`}
        {state.opened?.waitsHere ? ' · waiting here' : ''}
        {state.opened?.promisedAt ? ` · promised ${clockTime(state.opened.promisedAt, clock)}` : ''}
      </p>
      <p className="row">
        <Button onClick={() => setEditing('customer')}>Edit the customer</Button>
        <Button onClick={() => setEditing('vehicle')}>Edit the vehicle</Button>
        {state.reports.length === 0 && state.ended === null ? (
          <Button onClick={() => setEditing('stay')}>Edit the stay</Button>
        ) : null}
        {state.reports.length === 0 && state.ended === null ? (
          <Button onClick={() => setEditing('end')}>End without a report</Button>
        ) : null}
      </p>
      {editing === 'customer' ? (
        <EditCustomer orderId={order.orderId} customer={customer} onClose={() => setEditing(null)} />
      ) : null}
      {editing === 'vehicle' ? (
        <EditVehicle orderId={order.orderId} vehicle={vehicle} onClose={() => setEditing(null)} />
      ) : null}
      {editing === 'stay' ? <EditStay order={order} onClose={() => setEditing(null)} /> : null}
      {editing === 'end' ? <EndOrder order={order} onClose={() => setEditing(null)} /> : null}
      {nextMoves(state, now).map((move) => (
        <Sentence key={`${move.code} ${move.wheel}`}>
          {move.mover === 'customer' ? (
            <CustomerWait order={order} words={moveWords(moves, move)} />
          ) : (
            moveWords(moves, move)
          )}
          {move.since === null || move.mover === 'nobody' ? null : (
            <span className="quiet"> {minutes(ageMinutes(move.since, now))}</span>
          )}
        </Sentence>
      ))}
    </header>
  )
}

/** "Waiting for the customer: link sent 09:12, opened 09:20." Opening a link is not an entry, so it is queried here. */
function CustomerWait({ order, words }: { order: ReadOrder; words: string }) {
  const clock = useShopClock()
  const links = useQuery(linksQuery(order.orderId))
  const link = links.data?.links.filter(({ revokedAt }) => revokedAt === null).at(-1)
  if (link === undefined) return words
  const opened = link.openedAt[0]
  return `Waiting for the customer: link sent ${clockTime(link.createdAt, clock)}, ${opened === undefined ? 'not opened yet' : `opened ${clockTime(opened, clock)}`}.`
}
