import type { Doubt } from '@bayledger/ledger/sound-entries'
import type { Pool } from 'pg'
import { AppError } from '../../../core/app-error.ts'
import { type KeptOrder, stateOfKept } from './kept-orders.ts'
import { memoryOf } from './process-memory.ts'

/** What a person reads of an order that nothing can be added to. */
export const doubtWords = ({ code, seq }: Doubt): string =>
  code === 'chain-broken'
    ? `Entry ${seq} of this order does not match its seal: it was changed, removed or added outside the program. The order can be read up to the entry before it, and nothing can be added or sealed. Tell the owner; npm run -s ledger:verify says more.`
    : `Entry ${seq} of this order was written by a newer version of the program. The order can be read up to the entry before it. Update the server to go on.`

/** Refuses to add to an order that cannot be relied on. */
export const refuseDoubted = ({ doubt }: { readonly doubt: Doubt | null }): void => {
  if (doubt) throw new AppError('ORDER_READ_ONLY', doubtWords(doubt), { reason: doubt.code })
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
