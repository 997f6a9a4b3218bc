import { getComeback } from '@bayledger/contract/comebacks'
import { queryOptions } from '@tanstack/react-query'
import type { ReadOrder } from '../../../../ledger/order.ts'
import { call } from '../../../../lib/api-client.ts'

/** What the warranty of a comeback rests on, read again once the odometer is, and whenever it is looked at anew. */
export const comebackQuery = ({ orderId, state }: Pick<ReadOrder, 'orderId' | 'state'>) =>
  queryOptions({
    queryKey: ['comeback', orderId, state.opened?.odometer ?? null],
    queryFn: ({ signal }) => call(getComeback, { params: { orderId }, signal }),
    staleTime: 0,
  })
