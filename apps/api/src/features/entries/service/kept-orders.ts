import type { Entry } from '@bayledger/ledger/entry'
import { advance, type Folded, foldAll } from '@bayledger/ledger/fold'
import { type GrowingList, growingList, membersOf, push } from '@bayledger/ledger/fold/growing-list'
import { type Doubt, soundAfter } from '@bayledger/ledger/sound-entries'
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
  /** Why nothing may be added: of what the database holds, only the entries before this doubt are here. */
  readonly doubt: Doubt | null
}

export type KeptOrders = {
  /** The order as this process knows it, perhaps behind the database; undefined where it is not in memory. */
  readonly peek: (shopId: string, orderId: string) => KeptOrder | undefined
  /** The order as the database has it now: only what was written since is read. */
  readonly refresh: (shopId: string, orderId: string) => Promise<KeptOrder>
  /** Reads the whole order anew from the database and holds it against what is in memory: before it is sealed. */
  readonly verify: (shopId: string, orderId: string) => Promise<KeptOrder>
  /** The orders in doubt that were read, for whoever looks after the service. */
  readonly doubted: () => readonly KeptOrder[]
  /**
   * Takes over entries that are in the database and follow the one numbered `after`; those that are known already are
   * passed over. `null` where the order was forgotten meanwhile, or is kept up to an earlier entry only: memory stays
   * as it is, and the next look reads what is missing.
   */
  readonly absorb: (
    shopId: string,
    orderId: string,
    after: number,
    entries: readonly Entry[],
  ) => KeptOrder | null
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

  const inDoubt = new Map<string, KeptOrder>()

  const judge = (key: string, order: KeptOrder, doubt: Doubt | null): KeptOrder => {
    const judged = { ...order, doubt }
    const slot = slots.get(key)
    if (slot) slot.order = judged
    if (doubt) inDoubt.set(key, judged)
    else inDoubt.delete(key)
    return judged
  }

  /** Takes over a whole ledger, or what follows on what is kept. */
  const take = (shopId: string, orderId: string, entries: readonly Entry[]): KeptOrder => {
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

  const absorb: KeptOrders['absorb'] = (shopId, orderId, after, entries) => {
    const kept = slots.get(orderKey(shopId, orderId))?.order
    return after > (kept ? seqOf(kept) : 0) ? null : take(shopId, orderId, entries)
  }

  const refresh: KeptOrders['refresh'] = async (shopId, orderId) => {
    const key = orderKey(shopId, orderId)
    const known = slots.get(key)?.order
    const after = known ? seqOf(known) : 0
    const read = await listEntriesAfter(pool, shopId, orderId, after)
    const { sound, doubt } = soundAfter(known?.last ?? null, read)
    const order = absorb(shopId, orderId, after, sound)
    // Forgotten while it was read: the whole of it is read.
    if (order === null) return refresh(shopId, orderId)
    // In memory a writer may be ahead of what was read here; an order without doubt and before it stays as it is.
    return doubt === null && order.doubt === null ? order : judge(key, order, doubt)
  }

  return {
    peek: (shopId, orderId) => slots.get(orderKey(shopId, orderId))?.order,
    refresh,
    verify: async (shopId, orderId) => {
      const key = orderKey(shopId, orderId)
      const known = slots.get(key)?.order
      const read = await listEntriesAfter(pool, shopId, orderId, 0)
      const { sound, doubt } = soundAfter(null, read)
      const differs = known
        ? entriesOf(known).find(({ seq, hash }) => read[seq - 1]?.hash !== hash)?.seq
        : undefined
      if (doubt === null && differs === undefined) return take(shopId, orderId, sound)
      const seq = Math.min(doubt?.seq ?? Number.POSITIVE_INFINITY, differs ?? Number.POSITIVE_INFINITY)
      slots.delete(key)
      return judge(key, take(shopId, orderId, sound.slice(0, seq - 1)), {
        code: doubt?.seq === seq ? doubt.code : 'chain-broken',
        seq,
      })
    },
    doubted: () => [...inDoubt.values()],
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
  doubt: null,
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
