import type { Entry } from '@bayledger/ledger/entry'
import { advance, type Folded, foldAll } from '@bayledger/ledger/fold'
import { type GrowingList, growingList, membersOf, push } from '@bayledger/ledger/fold/growing-list'
import { type Doubt, doubtOfHead, soundAfter } from '@bayledger/ledger/sound-entries'
import { blankOrder, type OrderState } from '@bayledger/ledger/state'
import type { Pool } from 'pg'
import { readLedgerAfter } from '../store/read-ledger.ts'
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
  /** Reads the whole order from the database again and compares it with what is in memory: before it is sealed. */
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

  /** Keeps the entries before the doubt, and nothing after them. */
  const cut = (shopId: string, orderId: string, entries: readonly Entry[], doubt: Doubt): KeptOrder => {
    const key = orderKey(shopId, orderId)
    slots.delete(key)
    return judge(key, take(shopId, orderId, entries.slice(0, doubt.seq - 1)), doubt)
  }

  const refresh: KeptOrders['refresh'] = async (shopId, orderId) => {
    const key = orderKey(shopId, orderId)
    const known = slots.get(key)?.order
    const after = known ? seqOf(known) : 0
    const read = await readLedgerAfter(pool, shopId, orderId, after)
    const sound = soundAfter(known?.last ?? null, read.entries)
    const doubt = sound.doubt ?? doubtOfHead(read.head, sound.sound.at(-1) ?? known?.last ?? null)
    if (doubt) return cut(shopId, orderId, [...(known ? entriesOf(known) : []), ...sound.sound], doubt)
    const order = absorb(shopId, orderId, after, sound.sound)
    // Forgotten while it was read: the whole of it is read.
    if (order === null) return refresh(shopId, orderId)
    return order.doubt ? judge(key, order, null) : order
  }

  return {
    peek: (shopId, orderId) => slots.get(orderKey(shopId, orderId))?.order,
    refresh,
    verify: async (shopId, orderId) => {
      const known = slots.get(orderKey(shopId, orderId))?.order
      const { entries, head } = await readLedgerAfter(pool, shopId, orderId, 0)
      const { sound, doubt: broken } = soundAfter(null, entries)
      const doubt = broken ?? doubtOfHead(head, sound.at(-1) ?? null)
      const differs = known
        ? entriesOf(known).find(({ seq, hash }) => entries[seq - 1]?.hash !== hash)?.seq
        : undefined
      if (differs !== undefined && (doubt === null || differs < doubt.seq))
        return cut(shopId, orderId, sound, { code: 'chain-broken', seq: differs })
      return doubt ? cut(shopId, orderId, sound, doubt) : take(shopId, orderId, sound)
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
