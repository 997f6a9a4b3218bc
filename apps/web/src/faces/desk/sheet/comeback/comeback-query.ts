import { getComeback } from '@bayledger/contract/comebacks'
import { queryOptions } from '@tanstack/react-query'
import { call } from '../../../../lib/api-client.ts'

/** What the warranty of a comeback rests on. */
export const comebackQuery = (orderId: string) =>
  queryOptions({
    queryKey: ['comeback', orderId],
    queryFn: ({ signal }) => call(getComeback, { params: { orderId }, signal }),
    staleTime: 60_000,
  })
