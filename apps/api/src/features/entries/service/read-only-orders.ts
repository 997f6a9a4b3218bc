import type { Doubt } from '@bayledger/ledger/sound-entries'
import type { Pool } from 'pg'
import { AppError } from '../../../core/app-error.ts'
import { type KeptOrder, stateOfKept } from './kept-orders.ts'
import { memoryOf } from './process-memory.ts'

/** Refuses to add to an order that cannot be relied on. */
export const refuseDoubted = ({ doubt }: { readonly doubt: Doubt | null }): void => {
  if (doubt) throw new AppError({ code: 'ORDER_READ_ONLY', doubt }, { reason: doubt.code })
}

export type ReadOnlyOrder = {
  readonly orderNumber: string
  readonly seq: number
  readonly code: Doubt['code']
}

/** The orders that this process has read and cannot rely on. */
export const listReadOnlyOrders = (pool: Pool): ReadOnlyOrder[] =>
  memoryOf(pool)
    .orders.doubted()
    .flatMap((order: KeptOrder) =>
      order.doubt
        ? [{ orderNumber: stateOfKept(order).opened?.orderNumber ?? order.orderId, ...order.doubt }]
        : [],
    )
