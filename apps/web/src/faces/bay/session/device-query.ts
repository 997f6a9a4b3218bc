import { getDevice } from '@bayledger/contract/devices'
import { queryOptions } from '@tanstack/react-query'
import { call } from '../../../lib/api-client.ts'

/** Which tablet this is; `DEVICE_UNKNOWN` if it was never enrolled. */
export const deviceQuery = queryOptions({
  queryKey: ['device'],
  queryFn: ({ signal }) => call(getDevice, { signal }),
  staleTime: Number.POSITIVE_INFINITY,
})
