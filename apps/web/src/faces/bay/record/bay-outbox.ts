import type { Draft } from '@bayledger/ledger/entry'
import { useSyncExternalStore } from 'react'
import { catchUpOrder, type OrderReply, orderKey, type Unsent } from '../../../features/ledger/order-query.ts'
import { sendEntries } from '../../../features/ledger/write-entries.ts'
import { sessionQuery } from '../../../features/people/queries.ts'
import { isCallProblem } from '../../../lib/problem.ts'
import { bayQueryClient } from '../query-client.ts'
import { lockTablet } from '../session/lock-store.ts'
import { makeOutbox, type OutboxContent, type Parcel } from './outbox.ts'

const heldOrder = (orderId: string) => bayQueryClient.getQueryData<OrderReply>(orderKey(orderId))

/** This tablet's own outbox. */
export const bayOutbox = makeOutbox({
  send: async ({ orderId, entries, sides }, pin) => {
    try {
      await sendEntries({ entries, sides, ...(pin === undefined ? {} : { pin }) })
    } catch (thrown) {
      if (isCallProblem(thrown, 'SESSION_MISSING') || isCallProblem(thrown, 'SESSION_EXPIRED')) lockTablet()
      throw thrown
    } finally {
      // Whatever came of it: a refusal may mean that someone was first.
      await catchUpOrder(bayQueryClient, orderId)
    }
  },
  isRead: (orderId, entryId) => heldOrder(orderId)?.entries.some(({ id }) => id === entryId) ?? false,
  signedIn: () => bayQueryClient.getQueryData(sessionQuery.queryKey)?.staff.staffId ?? null,
  retryAfter: (milliseconds, retry) => void setTimeout(retry, milliseconds),
})

globalThis.window?.addEventListener('online', () => bayOutbox.wake())

export const useOutbox = (): OutboxContent =>
  useSyncExternalStore(bayOutbox.subscribe, () => bayOutbox.content())

/** What this tablet wrote of an order and the server's ledger, as it was read here, does not hold yet. */
export const unsentOf = (onTop: readonly Parcel[], { orderId, entries }: OrderReply): Unsent => {
  const shopId = entries[0]?.shopId ?? ''
  const read = new Set(entries.map(({ id }) => id))
  const parcels = onTop.filter((parcel) => parcel.orderId === orderId)
  return {
    drafts: parcels.flatMap((parcel) =>
      parcel.entries
        .filter(({ id }) => !read.has(id))
        .map(
          (entry) =>
            ({
              ...entry,
              shopId,
              writtenBy: { kind: 'staff', staffId: parcel.staffId },
              deviceId: parcel.deviceId,
            }) as Draft,
        ),
    ),
    sides: parcels.flatMap(({ sides }) => sides),
  }
}
