import { listOrderPhotos } from '@bayledger/contract/photos'
import { queryOptions } from '@tanstack/react-query'
import { call } from '../../lib/api-client.ts'

/** Which photos of an order have arrived. While some are missing it looks again: a photo's arrival is no entry. */
export const orderPhotosQuery = (orderId: string, digests: readonly string[]) =>
  queryOptions({
    queryKey: ['orders', orderId, 'photos', digests.length],
    queryFn: ({ signal }) => call(listOrderPhotos, { params: { orderId }, signal }),
    refetchInterval: ({ state }) =>
      digests.every((digest) =>
        [...(state.data?.received ?? []), ...(state.data?.erased ?? [])].includes(digest),
      )
        ? false
        : 5_000,
  })
