import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { floorQuery } from '../../../features/floor/queries.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { inBayOrder, isForTheBay } from '../bay-rows.ts'
import { deviceQuery } from '../session/device-query.ts'
import { useSignedIn } from '../session/signed-in.ts'
import { VehicleRow } from './vehicle-row.tsx'
import './my-vehicles.css'

/** The vehicles where the bay must act, mine first; the others are one tap away. */
export function MyVehiclesRoute() {
  const floor = useQuery(floorQuery)
  const device = useQuery(deviceQuery)
  const person = useSignedIn()
  const [all, setAll] = useState(false)
  const here = (floor.data?.rows ?? []).filter(
    (row) => row.isOpen && row.locationId === device.data?.location.locationId,
  )
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
      {floor.data !== undefined && rows.length === 0 ? (
        <p>Nothing waits for the bay. New write-ups show here by themselves.</p>
      ) : null}
      <ul>
        {rows.map((row) => (
          <VehicleRow key={row.orderId} row={row} staffId={person?.staffId ?? ''} />
        ))}
      </ul>
    </main>
  )
}
