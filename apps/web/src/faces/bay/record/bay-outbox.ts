import type { AppendResult } from '@bayledger/contract/entries'
import { useEffect, useRef, useState } from 'react'
import { catchUpOrder, heldSeq, orderKey } from '../../../features/ledger/order-query.ts'
import { deliverEntries, refusalProblem } from '../../../features/ledger/write-entries.ts'
import { sessionQuery } from '../../../features/people/queries.ts'
import { type Delivery, deliveriesOf, joined } from '../../../ledger/delivery.ts'
import { indexedDbParcels } from '../../../ledger/indexed-db-parcels.ts'
import type { OrderReply } from '../../../ledger/order.ts'
import { makeOutbox, type OutboxContent } from '../../../ledger/outbox.ts'
import type { Parcel } from '../../../ledger/parcel.ts'
import { whenIdle } from '../../../ledger/when-idle.ts'
import { isOutOfReach } from '../../../lib/out-of-reach.ts'
import { CallProblem, isCallProblem, problemText } from '../../../lib/problem.ts'
import { keepDraft } from '../form/draft-store.ts'
import { bayQueryClient } from '../query-client.ts'
import { deviceQuery } from '../session/device-query.ts'
import { serverAnswered, sessionLost } from '../session/local-session.ts'
import { isLocked } from '../session/lock-store.ts'

const heldOrder = (orderId: string) => bayQueryClient.getQueryData<OrderReply>(orderKey(orderId))

const signedIn = () => bayQueryClient.getQueryData(sessionQuery.queryKey)?.staff.staffId ?? null

/** Whether the tablet hands in under its own key, whoever is signed in. */
const isKeyed = () => bayQueryClient.getQueryData(deviceQuery.queryKey)?.hasKey === true

/** Without a key a person's entries go under their own session only. */
const handInOrDeliver = async (parcel: Parcel, waited: boolean): Promise<AppendResult[]> => {
  const { handIn } = await import('./hand-in.ts')
  const results = await handIn(parcel, waited)
  if (results !== null) return results
  if (parcel.staffId !== signedIn()) throw noKey()
  const { entries, sides, heardSeq } = parcel
  return deliverEntries({ entries, sides, heard: { seq: heardSeq, waited } })
}

const deliver = async (parcels: readonly Parcel[], waited: boolean): Promise<readonly Delivery[]> => {
  const [first, ...others] = parcels
  if (first === undefined) return []
  try {
    const results = await handInOrDeliver(joined([first, ...others]), waited)
    serverAnswered()
    return deliveriesOf(parcels, results, refusalProblem)
  } catch (problem) {
    if (isCallProblem(problem, 'SESSION_MISSING') || isCallProblem(problem, 'SESSION_EXPIRED')) sessionLost()
    // A tablet that was put out hands in what is sealed, and opens nothing more.
    if (isCallProblem(problem, 'DEVICE_UNKNOWN'))
      void bayQueryClient.refetchQueries({ queryKey: deviceQuery.queryKey })
    if (staysHere(problem)) return parcels.map(() => ({ became: 'out-of-reach', problem }))
    // What is wrong with one of them is not said: each goes by itself, the first of them now.
    return others.length > 0 ? deliver([first], waited) : [{ became: 'refused', problem }]
  }
}

/** No answer came, or one that says nothing of these entries: the session is over, or the tablet has to be enrolled again. */
const staysHere = (thrown: unknown): boolean =>
  isOutOfReach(thrown) ||
  (isCallProblem(thrown) &&
    (thrown.body.status === 401 || thrown.body.status === 429 || thrown.body.code === 'SIGNATURE_REFUSED'))

const noKey = () =>
  new CallProblem({
    status: 0,
    code: 'UNREACHABLE',
    title: 'This tablet has no key.',
    detail: 'What was written here goes out when whoever wrote it signs in again.',
  })

/** This tablet's own outbox. */
export const bayOutbox = makeOutbox({
  store: indexedDbParcels,
  send: async (parcels, waited) => {
    const deliveries = await deliver(parcels, waited)
    // Whatever came of it: a refusal may mean that someone was first. Whoever unlocks the tablet reads everything anew.
    const [first] = parcels
    if (first !== undefined && !isLocked()) {
      await whenIdle()
      await catchUpOrder(bayQueryClient, first.orderId)
    }
    return deliveries
  },
  isRead: (orderId, entryId) => heldOrder(orderId)?.entries.some(({ id }) => id === entryId) ?? false,
  maySend: ({ staffId, deviceId }) => (deviceId !== null && isKeyed()) || staffId === signedIn(),
  retryAfter: (milliseconds, retry) => void setTimeout(retry, milliseconds),
  // Nobody waits for the server: whoever presses on is answered first.
  alone: async (work) => {
    await whenIdle()
    await navigator.locks.request('bayledger.outbox', work)
  },
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

/** How many entries of an order this tablet has read. */
export const heardSeqOf = (orderId: string): number => heldSeq(bayQueryClient, orderId)

globalThis.window?.addEventListener('online', () => bayOutbox.wake())

/**
 * A part of what the outbox holds, always the same one; a screen that uses it is drawn again when that part changes: once,
 * together with what else follows from an entry.
 */
export const useOutbox = <T>(part: (content: OutboxContent) => T): T => {
  const [[shown], show] = useState((): readonly [T] => [part(bayOutbox.content())])
  const newest = useRef(part)
  useEffect(() => {
    const look = () =>
      show((before) => {
        const [held] = before
        const now = newest.current(bayOutbox.content())
        return Object.is(held, now) ? before : [now]
      })
    // What came before this screen listened.
    look()
    return bayOutbox.subscribe(look)
  }, [])
  return shown
}
