import type { FloorRow } from '@bayledger/contract/orders'
import { type QueryClient, useQuery, useQueryClient } from '@tanstack/react-query'
import { useEffect } from 'react'
import { floorQuery } from '../../../features/floor/queries.ts'
import { catchUpOrder, heldSeq, orderKey, orderQuery } from '../../../features/ledger/order-query.ts'
import { isOutOfReach } from '../../../lib/out-of-reach.ts'
import { inBayOrder, isForTheBay } from '../bay-rows.ts'
import { tellHeldOrders } from '../order/held-orders.ts'
import { bayOutbox } from '../record/bay-outbox.ts'
import { deviceQuery } from '../session/device-query.ts'
import { useSignedIn } from '../session/signed-in.ts'

/** The orders that a tablet reads ahead: those of its place where the bay must act, and those of whoever works on it. */
export const ordersAhead = (
  rows: readonly FloorRow[],
  locationId: string,
  staffId: string,
): readonly FloorRow[] =>
  inBayOrder(
    rows.filter(
      (row) =>
        row.isOpen && row.locationId === locationId && (isForTheBay(row) || row.assignedTo === staffId),
    ),
    staffId,
  )

/**
 * Reads every order of the list, so that each opens without a network, and forgets those that have left it. An order that is
 * on the screen, or of which something waits to be sent, stays.
 */
export const useReadAhead = (isSeen: boolean): void => {
  const client = useQueryClient()
  const floor = useQuery(floorQuery)
  const device = useQuery({ ...deviceQuery, enabled: false }).data
  const person = useSignedIn()
  const rows = floor.data?.rows
  const isFromServer = floor.isSuccess && floor.isFetchedAfterMount
  const locationId = device?.location.locationId
  const deviceId = device?.deviceId
  const staffId = person?.staffId
  useEffect(() => {
    if (!isSeen || !isFromServer || !rows || !locationId || !deviceId || !staffId) return
    let isOver = false
    const held = ordersAhead(rows, locationId, staffId)
    forgetOthers(client, new Set(held.map(({ orderId }) => orderId)))
    void readAll(client, held, () => isOver).then(() => {
      // The server takes a tablet to hold what it reads until it says otherwise.
      if (!isOver) tellHeldOrders(rows, staffId, deviceId)
    })
    return () => {
      isOver = true
    }
  }, [client, isSeen, rows, isFromServer, locationId, deviceId, staffId])
}

/** One after the other, those of the person first; gives up where the server is out of reach. */
const readAll = async (
  client: QueryClient,
  rows: readonly FloorRow[],
  isOver: () => boolean,
): Promise<void> => {
  for (const { orderId, seq } of rows) {
    if (isOver()) return
    const before = heldSeq(client, orderId)
    if (before > 0 && before < seq) await catchUpOrder(client, orderId)
    if (heldSeq(client, orderId) >= seq) continue
    await client.prefetchQuery({ ...orderQuery(orderId), staleTime: 0, retry: false })
    const problem = client.getQueryState(orderKey(orderId))?.error ?? null
    if (problem !== null && isOutOfReach(problem)) return
  }
}

const forgetOthers = (client: QueryClient, held: ReadonlySet<string>): void => {
  const { onTop, refused } = bayOutbox.content()
  const unsent = new Set([...onTop, ...refused.map(({ parcel }) => parcel)].map(({ orderId }) => orderId))
  client.removeQueries({
    predicate: (query) => {
      const [first, orderId] = query.queryKey
      return (
        first === 'orders' &&
        typeof orderId === 'string' &&
        !held.has(orderId) &&
        !unsent.has(orderId) &&
        query.getObserversCount() === 0
      )
    },
  })
}
