import type { Draft } from '@bayledger/ledger/entry'
import { useSyncExternalStore } from 'react'
import { catchUpOrder, type OrderReply, orderKey, type Unsent } from '../../../features/ledger/order-query.ts'
import { deliverEntries, firstNotTaken, refusalProblem } from '../../../features/ledger/write-entries.ts'
import { sessionQuery } from '../../../features/people/queries.ts'
import { indexedDbParcels } from '../../../ledger/indexed-db-parcels.ts'
import { type Delivery, makeOutbox, type OutboxContent } from '../../../ledger/outbox.ts'
import type { Parcel } from '../../../ledger/parcel.ts'
import { CallProblem, isCallProblem, problemText } from '../../../lib/problem.ts'
import { keepDraft } from '../form/draft-store.ts'
import { bayQueryClient } from '../query-client.ts'
import { lockTablet } from '../session/lock-store.ts'

const heldOrder = (orderId: string) => bayQueryClient.getQueryData<OrderReply>(orderKey(orderId))

const deliver = async ({ entries, sides }: Parcel, pin: string | undefined): Promise<Delivery> => {
  try {
    const notTaken = firstNotTaken(
      await deliverEntries({ entries, sides, ...(pin === undefined ? {} : { pin }) }),
    )
    if (notTaken === null) return { became: 'taken' }
    const problem = refusalProblem(notTaken)
    return notTaken.result === 'refused' ? { became: 'refused', problem } : { became: 'not-yet', problem }
  } catch (problem) {
    if (isCallProblem(problem, 'SESSION_MISSING') || isCallProblem(problem, 'SESSION_EXPIRED')) lockTablet()
    return { became: isOutOfReach(problem) ? 'out-of-reach' : 'refused', problem }
  }
}

/** No answer came, the server failed, something in between answered, or the session is over. */
const isOutOfReach = (thrown: unknown): boolean => {
  if (!isCallProblem(thrown)) return true
  const { status, code } = thrown.body
  return (
    status === 0 ||
    status === 429 ||
    status >= 500 ||
    code === 'REPLY_UNREADABLE' ||
    (status === 401 && code !== 'PIN_REFUSED')
  )
}

/** This tablet's own outbox. */
export const bayOutbox = makeOutbox({
  store: indexedDbParcels,
  send: async (parcel, pin) => {
    const delivery = await deliver(parcel, pin)
    // Whatever came of it: a refusal may mean that someone was first.
    await catchUpOrder(bayQueryClient, parcel.orderId)
    return delivery
  },
  isRead: (orderId, entryId) => heldOrder(orderId)?.entries.some(({ id }) => id === entryId) ?? false,
  signedIn: () => bayQueryClient.getQueryData(sessionQuery.queryKey)?.staff.staffId ?? null,
  retryAfter: (milliseconds, retry) => void setTimeout(retry, milliseconds),
  alone: (work) => navigator.locks.request('bayledger.outbox', work),
  refill: ({ key, content }) => keepDraft(key, content),
  textOf: (problem) => {
    const { title, detail } = problemText(problem)
    return { title, detail }
  },
  notKept: (cause) =>
    new CallProblem(
      {
        status: 0,
        code: 'TABLET_FULL',
        title: 'This tablet could not keep it.',
        detail: 'Its storage is full or broken. Make room on the tablet, or write it on another one.',
      },
      cause,
    ),
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
