import { useQuery, useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { floorQuery } from '../../../features/floor/queries.ts'
import { orderKey } from '../../../features/ledger/order-query.ts'
import type { OrderReply } from '../../../ledger/order.ts'
import { clockTime } from '../../../lib/format.ts'
import { useHand } from '../../../lib/hand.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { inBayOrder, isForTheBay } from '../bay-rows.ts'
import { useOutbox } from '../record/bay-outbox.ts'
import { RefusedTray } from '../record/refused-notices.tsx'
import { deviceQuery } from '../session/device-query.ts'
import { useBayClock, useSignedIn } from '../session/signed-in.ts'
import { programVersion } from '../shell/program.ts'
import { VehicleRow } from './vehicle-row.tsx'
import './my-vehicles.css'

/** What a row says of work that is not sent takes the ledger's words: they come with a vehicle's screens, behind the list. */
const rowHereQuery = {
  queryKey: ['row-here'],
  queryFn: async () => {
    const { rowHere } = await import('./bay-order.tsx')
    return rowHere
  },
  staleTime: Number.POSITIVE_INFINITY,
}

/** The vehicles where the bay must act, mine first; the others are one tap away. */
export function MyVehiclesRoute() {
  const floor = useQuery(floorQuery)
  const device = useQuery(deviceQuery)
  const person = useSignedIn()
  const clock = useBayClock()
  const [hand, setHand] = useHand()
  const [all, setAll] = useState(false)
  const client = useQueryClient()
  const onTop = useOutbox((content) => content.onTop)
  const rowHere = useQuery(rowHereQuery).data
  const now = new Date().toISOString()
  const here = (floor.data?.rows ?? [])
    .filter((row) => row.isOpen && row.locationId === device.data?.location.locationId)
    .map((row) => rowHere?.(row, client.getQueryData<OrderReply>(orderKey(row.orderId)), onTop, now) ?? row)
  const rows = inBayOrder(all ? here : here.filter(isForTheBay), person?.staffId ?? '')
  const others = here.length - here.filter(isForTheBay).length
  return (
    <main className="my-vehicles">
      <title>My vehicles · Bayledger bay</title>
      <div className="my-vehicles-head">
        <h1>{all ? 'All open vehicles' : 'My vehicles'}</h1>
        {all || others > 0 ? (
          <Button onClick={() => setAll(!all)}>
            {all ? 'Only what the bay can do' : `Waiting elsewhere: ${others}`}
          </Button>
        ) : null}
      </div>
      {floor.isError && floor.data === undefined ? (
        <ProblemNotice problem={problemText(floor.error)} onRetry={() => void floor.refetch()} />
      ) : null}
      {floor.isError && floor.data !== undefined ? (
        <p role="status" className="quiet">
          The server is out of reach. This is the list of {clockTime(floor.data.asOf, clock)}.
        </p>
      ) : null}
      {floor.data !== undefined && rows.length === 0 ? (
        <p>Nothing waits for the bay. New write-ups show here by themselves.</p>
      ) : null}
      <RefusedTray />
      <ul>
        {rows.map((row) => (
          <VehicleRow key={row.orderId} row={row} staffId={person?.staffId ?? ''} />
        ))}
      </ul>
      <div className="my-vehicles-foot">
        <Button onClick={() => setHand(hand === 'left' ? 'right' : 'left')}>
          {hand === 'left' ? 'For the right hand' : 'For the left hand'}
        </Button>
        <p className="my-vehicles-version quiet">Bayledger {programVersion()}</p>
      </div>
    </main>
  )
}
