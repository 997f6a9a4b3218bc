import type { FloorRow } from '@bayledger/contract/orders'
import { keepOrders } from '@bayledger/contract/orders'
import type { OrderReply } from '../../../ledger/order.ts'
import { call } from '../../../lib/api-client.ts'
import { bayQueryClient } from '../query-client.ts'

/**
 * Tells the server which orders this tablet goes on holding, once the list of vehicles was read: those that are
 * somebody's here, or on which something was written here. What was only looked at, or read ahead, is dropped.
 */
export const tellHeldOrders = (rows: readonly FloorRow[], staffId: string, deviceId: string): void => {
  const held = bayQueryClient
    .getQueriesData<OrderReply>({
      queryKey: ['orders'],
      predicate: ({ queryKey }) => queryKey.length === 2,
    })
    .flatMap(([, order]) => (order?.entries === undefined ? [] : [order]))
  const open = new Map(rows.filter(({ isOpen }) => isOpen).map((row) => [row.orderId, row]))
  const stays = ({ orderId, entries }: OrderReply): boolean =>
    open.has(orderId) &&
    (open.get(orderId)?.assignedTo === staffId || entries.some((entry) => entry.deviceId === deviceId))
  // Dropped here first: a tablet that is out of reach from now on must not take itself for the only one.
  for (const { orderId } of held.filter((order) => order.heldAlone && !stays(order)))
    bayQueryClient.setQueryData<OrderReply>(
      ['orders', orderId],
      (order) => order && { ...order, heldAlone: false },
    )
  // Where the server does not hear it, it takes the tablet to hold more than it does, which keeps more shut.
  call(keepOrders, { body: { orderIds: held.filter(stays).map(({ orderId }) => orderId) } }).catch(
    () => undefined,
  )
}
