import { useQuery } from '@tanstack/react-query'
import type { ReadOrder } from '../../ledger/order.ts'
import { orderPhotosQuery } from './queries.ts'

/** Says before the seal that photos are still on their tablet; nothing where all have arrived. */
export function MissingPhotos({ order }: { order: ReadOrder }) {
  const digests = order.state.photos.map(({ digest }) => digest)
  const query = useQuery({ ...orderPhotosQuery(order.orderId, digests), enabled: digests.length > 0 })
  if (query.data === undefined) return null
  const { received, erased } = query.data
  const missing = digests.filter((digest) => !received.includes(digest) && !erased.includes(digest)).length
  if (missing === 0) return null
  return (
    <p>
      {missing === 1 ? '1 photo is still on its tablet' : `${missing} photos are still on their tablet`}.
      Bring the tablet to the network first, or the report says “not received”.
    </p>
  )
}
