import type { ReplyOf } from '@bayledger/contract/endpoint'
import type { SentEntry } from '@bayledger/contract/entries'
import { getOrder } from '@bayledger/contract/orders'
import { fold } from '@bayledger/ledger/fold'
import type { Foldable } from '@bayledger/ledger/fold/foldable'
import type { OrderState } from '@bayledger/ledger/state'
import { queryOptions } from '@tanstack/react-query'
import { call } from '../../lib/api-client.ts'

/** An order as a screen reads it: the folded state, and the personal words that its digests stand for. */
export type ReadOrder = Omit<ReplyOf<typeof getOrder>, 'entries' | 'sides'> & {
  readonly entries: readonly Foldable[]
  readonly state: OrderState
  /** The words behind a digest; erased or withheld ones say so. */
  readonly personalText: (digest: string) => string
}

export const orderKey = (orderId: string) => ['orders', orderId] as const

/** The one way to an order: its ledger is fetched and folded here with the server's own code. */
export const orderQuery = (orderId: string) =>
  queryOptions({
    queryKey: orderKey(orderId),
    queryFn: async ({ signal }): Promise<ReplyOf<typeof getOrder>> =>
      call(getOrder, { params: { orderId }, signal }),
    select: readOrder,
  })

const readOrder = (reply: ReplyOf<typeof getOrder>): ReadOrder => {
  const { entries, sides, ...rest } = reply
  const words = new Map(sides.map(({ digest, text }) => [digest, text]))
  const folded = entries.map(asFoldable)
  return {
    ...rest,
    entries: folded,
    state: fold(folded),
    personalText: (digest) => words.get(digest) ?? '(not kept here)',
  }
}

/** The server parsed each payload by its kind before it was admitted; here it is trusted. */
const asFoldable = (entry: SentEntry): Foldable => entry as Foldable
