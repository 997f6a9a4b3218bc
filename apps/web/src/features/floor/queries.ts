import { listFloor } from '@bayledger/contract/orders'
import { queryOptions } from '@tanstack/react-query'
import { call } from '../../lib/api-client.ts'

/** The floor, read whole: live wake-ups and every return to the page read it again. */
export const floorQuery = queryOptions({
  queryKey: ['floor'],
  queryFn: ({ signal }) => call(listFloor, { query: {}, signal }),
  refetchInterval: 30_000,
})
