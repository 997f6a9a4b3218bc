import { getDevice } from '@bayledger/contract/devices'
import { queryOptions } from '@tanstack/react-query'
import { call } from '../../../lib/api-client.ts'

/** Which tablet this is; `DEVICE_UNKNOWN` for one that was never let in. */
export const deviceQuery = queryOptions({
  queryKey: ['device'],
  queryFn: ({ signal }) => call(getDevice, { signal }),
  staleTime: Number.POSITIVE_INFINITY,
})
