import { useQuery } from '@tanstack/react-query'
import { useCallback } from 'react'
import { orderQuery } from '../../../features/ledger/order-query.ts'
import { type OrderReply, readOrder, unsentOf } from '../../../ledger/order.ts'
import { useOutbox } from '../record/bay-outbox.ts'

/**
 * An order as this tablet knows it: what the server sent, and on top of it what was written here and is not sent yet.
 * `isAsked`: whether the server is asked for it, or only what is here is shown.
 */
export const useOrderHere = (orderId: string, isAsked = true) => {
  const { onTop } = useOutbox()
  const select = useCallback((reply: OrderReply) => readOrder(reply, unsentOf(onTop, reply)), [onTop])
  return useQuery({ ...orderQuery(orderId), select, enabled: isAsked })
}
