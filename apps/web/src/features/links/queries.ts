import { listLinks } from '@bayledger/contract/links'
import { queryOptions } from '@tanstack/react-query'
import { call } from '../../lib/api-client.ts'

/** An order's links and when each was opened; refetched on every wake-up because its key begins with `orders`. */
export const linksQuery = (orderId: string) =>
  queryOptions({
    queryKey: ['orders', orderId, 'links'],
    queryFn: ({ signal }) => call(listLinks, { params: { orderId }, signal }),
  })
