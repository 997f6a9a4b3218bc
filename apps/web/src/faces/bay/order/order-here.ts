import { useQuery } from '@tanstack/react-query'
import { useCallback } from 'react'
import { orderQuery } from '../../../features/ledger/order-query.ts'
import { type OrderReply, readOnTop } from '../../../ledger/order.ts'
import { useOutbox } from '../record/bay-outbox.ts'

/**
 * An order as this tablet knows it: what the server sent, and on top of it what was written here and is not sent yet.
 * `isAsked`: whether the server is asked for it, or only what is here is shown.
 */
export const useOrderHere = (orderId: string, isAsked = true) => {
  const onTop = useOutbox((content) => content.onTop)
  const select = useCallback((reply: OrderReply) => readOnTop(reply, onTop), [onTop])
  // What stays the same stays the same object without being compared, however long the order is.
  return useQuery({ ...orderQuery(orderId), select, enabled: isAsked, structuralSharing: false })
}
