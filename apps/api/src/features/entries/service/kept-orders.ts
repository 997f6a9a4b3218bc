import type { Entry } from '@bayledger/ledger/entry'
import { advance, type Folded, foldAll } from '@bayledger/ledger/fold'
import { type GrowingList, growingList, membersOf, push } from '@bayledger/ledger/fold/growing-list'
import { blankOrder, type OrderState } from '@bayledger/ledger/state'
import type { Pool } from 'pg'
import { listEntriesAfter } from '../store/read-ledger.ts'
import { orderKey } from '../store/write-entries.ts'

/** An order as of one entry. Immutable: `continued` gives another one. */
export type KeptOrder = {
  readonly shopId: string
  readonly orderId: string
  readonly entries: GrowingList<Entry>
  /** `null` before the first entry. */
  readonly folded: Folded | null
  readonly last: Entry | null
}

export type KeptOrders = {
  /** The order as this process knows it, perhaps behind the database; undefined where it is not in memory. */
  readonly peek: (shopId: string, orderId: string) => KeptOrder | undefined
  /** The order as the database has it now: only what was written since is read. */
  readonly refresh: (shopId: string, orderId: string) => Promise<KeptOrder>
  /** Takes over entries that are in the database; those that are known already are passed over. */
  readonly absorb: (shopId: string, orderId: string, entries: readonly Entry[]) => KeptOrder
  /** An entry of the order by its id, among those that are in the database. */
  readonly find: (shopId: string, orderId: string, id: string) => Entry | undefined
}

export const stateOfKept = ({ folded, shopId, orderId }: KeptOrder): OrderState =>
  folded?.state ?? blankOrder(shopId, orderId)

export const seqOf = ({ last }: KeptOrder): number => last?.seq ?? 0

/** The order with one more entry. */
export const continued = (order: KeptOrder, entry: Entry): KeptOrder => ({
  ...order,
  entries: push(order.entries, entry),
  folded: advance(order.folded, entry),
  last: entry,
})

/** How many orders are kept: a shop's open orders and those it looked at last. */
const mostKept = 300

type Slot = { order: KeptOrder; readonly places: Map<string, number> }

/** Orders in memory, each folded; what was not looked at for longest is forgotten first. */
export const keepOrders = (pool: Pool): KeptOrders => {
  const slots = new Map<string, Slot>()

  const absorb: KeptOrders['absorb'] = (shopId, orderId, entries) => {
    const key = orderKey(shopId, orderId)
    const slot = slots.get(key) ?? { order: blank(shopId, orderId), places: new Map() }
    const added = entries.filter(({ seq }) => seq > seqOf(slot.order))
    slot.order = slot.order.last === null ? begun(slot.order, added) : added.reduce(continued, slot.order)
    for (const { id, seq } of added) slot.places.set(id, seq)
    slots.delete(key)
    slots.set(key, slot)
    const [oldest] = slots.keys()
    if (slots.size > mostKept && oldest !== undefined) slots.delete(oldest)
    return slot.order
  }

  return {
    peek: (shopId, orderId) => slots.get(orderKey(shopId, orderId))?.order,
    refresh: async (shopId, orderId) => {
      const known = slots.get(orderKey(shopId, orderId))?.order
      return absorb(shopId, orderId, await listEntriesAfter(pool, shopId, orderId, known ? seqOf(known) : 0))
    },
    absorb,
    find: (shopId, orderId, id) => {
      const slot = slots.get(orderKey(shopId, orderId))
      const seq = slot?.places.get(id)
      return seq === undefined ? undefined : slot?.order.entries.shared[seq - 1]
    },
  }
}

const blank = (shopId: string, orderId: string): KeptOrder => ({
  shopId,
  orderId,
  entries: growingList([]),
  folded: null,
  last: null,
})

/** A whole ledger at once: folded in one go. */
const begun = (order: KeptOrder, entries: readonly Entry[]): KeptOrder =>
  entries.length === 0
    ? order
    : {
        ...order,
        entries: growingList(entries),
        folded: foldAll(entries),
        last: entries.at(-1) ?? null,
      }

export const entriesOf = ({ entries }: KeptOrder): readonly Entry[] => membersOf(entries)
