import { getEntriesAfter, getOrder } from '@bayledger/contract/orders'
import { type QueryClient, queryOptions } from '@tanstack/react-query'
import { type OrderReply, readOrder } from '../../ledger/order.ts'
import { catchUp, hearFirst, type Standing, type SyncWorld } from '../../ledger/sync.ts'
import { call } from '../../lib/api-client.ts'

export const orderKey = (orderId: string) => ['orders', orderId] as const

/** The only way to read an order: fetches its ledger and folds it with the server's own code. */
export const orderQuery = (orderId: string) =>
  queryOptions({
    queryKey: orderKey(orderId),
    queryFn: async ({ signal }): Promise<OrderReply> => call(getOrder, { params: { orderId }, signal }),
    select: (reply: OrderReply) => readOrder(reply),
  })

/** The orders that the query client holds, and how more of them is read; `signal` gives up a reading. */
const heldBy = (client: QueryClient, signal?: AbortSignal): SyncWorld => ({
  held: (id) => client.getQueryData<OrderReply>(orderKey(id)),
  readGained: (id, afterSeq) =>
    call(getEntriesAfter, {
      params: { orderId: id },
      query: { after: String(afterSeq) },
      ...(signal === undefined ? {} : { signal }),
    }),
  change: (id, change) => void client.setQueryData<OrderReply>(orderKey(id), (held) => held && change(held)),
  readWhole: (id) => client.invalidateQueries({ queryKey: orderKey(id) }),
})

/** How many entries of an order were read; 0: none. */
export const heldSeq = (client: QueryClient, orderId: string): number =>
  client.getQueryData<OrderReply>(orderKey(orderId))?.head.seq ?? 0

/** How long a person waits for the server before what is known here counts. */
const longestWaitMs = 8_000

/** Hears the server before something that other tablets' entries may forbid. */
export const hearOrderFirst = (client: QueryClient, orderId: string): Promise<Standing> =>
  hearFirst(heldBy(client, AbortSignal.timeout(longestWaitMs)), orderId)

/** Reads what an order gained after the last entry that the query client holds, and adds it there. */
export const catchUpOrder = async (client: QueryClient, orderId: string): Promise<void> => {
  const gained = await catchUp(heldBy(client), orderId)
  if (!gained) return
  // What the server computes from the order follows it.
  await client.invalidateQueries({
    queryKey: orderKey(orderId),
    predicate: ({ queryKey }) => queryKey.length > 2,
  })
}
