import { getVehiclePage } from '@bayledger/contract/vehicle-page'
import { queryOptions } from '@tanstack/react-query'
import { call } from '../../../lib/api-client.ts'

/** All that the shop knows of one vehicle, read anew whenever it is opened. */
export const vehiclePageQuery = (vehicleId: string) =>
  queryOptions({
    queryKey: ['vehicle-page', vehicleId],
    queryFn: ({ signal }) => call(getVehiclePage, { params: { vehicleId }, signal }),
    staleTime: 0,
  })
