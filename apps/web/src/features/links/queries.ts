import { listLinks } from '@bayledger/contract/links'
import { queryOptions } from '@tanstack/react-query'
import { call } from '../../lib/api-client.ts'

/** An order's links with when each was opened; read again with every wake-up, as it stands under `orders`. */
export const linksQuery = (orderId: string) =>
  queryOptions({
    queryKey: ['orders', orderId, 'links'],
    queryFn: ({ signal }) => call(listLinks, { params: { orderId }, signal }),
  })
