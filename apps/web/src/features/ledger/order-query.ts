import type { ReplyOf } from '@bayledger/contract/endpoint'
import type { SentEntry, SentSide } from '@bayledger/contract/entries'
import { getEntriesAfter, getOrder } from '@bayledger/contract/orders'
import type { Draft } from '@bayledger/ledger/entry'
import { fold } from '@bayledger/ledger/fold'
import { type Foldable, layOnTop } from '@bayledger/ledger/fold/foldable'
import type { OrderState } from '@bayledger/ledger/state'
import { type QueryClient, queryOptions } from '@tanstack/react-query'
import { call } from '../../lib/api-client.ts'

/** An order as a screen reads it: the folded state, and the personal texts behind its digests. */
export type ReadOrder = Omit<ReplyOf<typeof getOrder>, 'entries'> & {
  readonly entries: readonly Foldable[]
  readonly state: OrderState
  /** The text behind a digest; an erased or withheld one says so. */
  readonly personalText: (digest: string) => string
}

export const orderKey = (orderId: string) => ['orders', orderId] as const

/** The only way to read an order: fetches its ledger and folds it with the server's own code. */
export const orderQuery = (orderId: string) =>
  queryOptions({
    queryKey: orderKey(orderId),
    queryFn: async ({ signal }): Promise<ReplyOf<typeof getOrder>> =>
      call(getOrder, { params: { orderId }, signal }),
    select: (reply: OrderReply) => readOrder(reply),
  })

export type OrderReply = ReplyOf<typeof getOrder>

/** What a device wrote and has not sent yet, after the server's entries. */
export type Unsent = { readonly drafts: readonly Draft[]; readonly sides: readonly SentSide[] }

/**
 * Reads what an order gained after the last entry that is held here, and adds it. Where that is not possible (a gap, a
 * failed call, an order that is not held), the order is marked to be read whole.
 */
export const catchUpOrder = async (client: QueryClient, orderId: string): Promise<void> => {
  const held = client.getQueryData<OrderReply>(orderKey(orderId))
  const merged = held ? await readGained(held).catch(() => null) : null
  if (held === undefined || merged === null) return client.invalidateQueries({ queryKey: orderKey(orderId) })
  if (merged.head.seq === held.head.seq) return
  // What another reading brought in the meantime may be newer than this one.
  client.setQueryData<OrderReply>(orderKey(orderId), (now) =>
    now === undefined || now.head.seq >= merged.head.seq ? now : merged,
  )
  // What the server computes from the order follows it.
  await client.invalidateQueries({
    queryKey: orderKey(orderId),
    predicate: ({ queryKey }) => queryKey.length > 2,
  })
}

const readGained = async (held: OrderReply): Promise<OrderReply | null> =>
  withGained(
    held,
    await call(getEntriesAfter, {
      params: { orderId: held.orderId },
      query: { after: String(held.head.seq) },
    }),
  )

/** The held order with the entries that follow its last one; `null` where something between them is missing. */
export const withGained = (held: OrderReply, gained: ReplyOf<typeof getEntriesAfter>): OrderReply | null => {
  const newer = gained.entries.filter(({ seq }) => seq > held.head.seq)
  const expected = gained.head.seq - held.head.seq
  if (newer.length !== expected || newer.some(({ seq }, index) => seq !== held.head.seq + index + 1))
    return null
  const known = new Set(held.sides.map(({ digest }) => digest))
  return {
    ...held,
    head: gained.head,
    entries: [...held.entries, ...newer],
    sides: [...held.sides, ...gained.sides.filter(({ digest }) => !known.has(digest))],
    withheld: gained.withheld,
    history: gained.history,
  }
}

/** The order as a screen reads it, with a device's own unsent drafts on top. */
export const readOrder = (reply: OrderReply, unsent: Unsent = { drafts: [], sides: [] }): ReadOrder => {
  const { entries, ...rest } = reply
  const words = new Map([...rest.sides, ...unsent.sides].map(({ digest, text }) => [digest, text]))
  const folded = layOnTop(entries.map(asFoldable), unsent.drafts)
  return {
    ...rest,
    entries: folded,
    state: fold(folded),
    personalText: (digest) => words.get(digest) ?? '(not kept here)',
  }
}

/** The server parsed each payload by its kind before it was admitted; here it is trusted. */
const asFoldable = (entry: SentEntry): Foldable => entry as Foldable
