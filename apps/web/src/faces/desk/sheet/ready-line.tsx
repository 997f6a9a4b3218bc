import { useQuery } from '@tanstack/react-query'
import { lazy, Suspense, useState } from 'react'
import { floorQuery } from '../../../features/floor/queries.ts'
import { readyWords } from '../../../features/floor/ready-words.ts'
import { Button } from '../../../ui/button.tsx'
import { Sentence } from '../../../ui/sentence.tsx'
import { useShopClock } from '../shop-clock.ts'
import type { OrderPart } from './order-part.ts'

/** Opened when a promise slips, which is seldom. */
const NewTimeDialog = lazy(async () => {
  const { NewTimeDialog } = await import('./new-time-dialog.tsx')
  return { default: NewTimeDialog }
})

/** The order's row on the floor list, which holds what the server computes beside the ledger. */
const useFloorRow = (orderId: string) => {
  const floor = useQuery(floorQuery)
  return { row: floor.data?.rows.find((one) => one.orderId === orderId), asOf: floor.data?.asOf ?? '' }
}

/** " · ready about 3:40 PM" in the head of an order, once there is a plan. */
export function ReadyTime({ order }: OrderPart) {
  const { row, asOf } = useFloorRow(order.orderId)
  const clock = useShopClock()
  return row?.ready ? ` · ${readyWords(row.ready, asOf, clock)}` : null
}

/** That the promise slips, with the button that does something about it; `isMain`: the head has no other main button. */
export function SlippingPromise({ order, isMain }: OrderPart & { isMain: boolean }) {
  const { row } = useFloorRow(order.orderId)
  const [isOpen, setOpen] = useState(false)
  const slip = row?.moves.find(({ code }) => code === 'promise-slips')
  return (
    <>
      {slip === undefined ? null : (
        <div className="order-move">
          <Sentence>{slip.words}</Sentence>
          <Button look={isMain ? 'main' : 'plain'} onClick={() => setOpen(true)}>
            Tell the customer
          </Button>
        </div>
      )}
      {isOpen ? (
        <Suspense fallback={null}>
          <NewTimeDialog order={order} onClose={() => setOpen(false)} />
        </Suspense>
      ) : null}
    </>
  )
}
