import { type FloorRow, listFloor } from '@bayledger/contract/orders'
import { type QueryClient, queryOptions } from '@tanstack/react-query'
import { call } from '../../lib/api-client.ts'
import { readPages } from '../../lib/read-pages.ts'

type Floor = { readonly asOf: string; readonly rows: readonly FloorRow[] }

const floorKey = ['floor'] as const

/** The whole floor, page after page, so that no open order is out of sight. */
export const floorQuery = queryOptions({
  queryKey: floorKey,
  queryFn: async ({ signal }): Promise<Floor> => {
    const pages = await readPages((cursor) =>
      call(listFloor, { query: cursor === null ? {} : { cursor }, signal }),
    )
    return { asOf: pages.at(-1)?.asOf ?? '', rows: pages.flatMap(({ rows }) => rows) }
  },
  refetchInterval: 5 * 60_000,
})

/** Reads the rows of the named orders again and puts them where they belong; an order that is over leaves the list. */
export const refreshFloorRows = async (client: QueryClient, orderIds: readonly string[]): Promise<void> => {
  if (orderIds.length === 0 || client.getQueryData(floorKey) === undefined) return
  const { asOf, rows } = await call(listFloor, { query: { orders: orderIds.join(',') } })
  client.setQueryData<Floor>(
    floorKey,
    (floor) => floor && { asOf, rows: mergeRows(floor.rows, rows, orderIds) },
  )
}

/** `read` in place of what the list held of `orderIds`, by opening as the server sorts them. */
export const mergeRows = (
  held: readonly FloorRow[],
  read: readonly FloorRow[],
  orderIds: readonly string[],
): FloorRow[] => {
  const moved = new Set(orderIds)
  return [...held.filter(({ orderId }) => !moved.has(orderId)), ...read].sort((one, other) =>
    `${one.openedAt} ${one.orderId}`.localeCompare(`${other.openedAt} ${other.orderId}`),
  )
}
