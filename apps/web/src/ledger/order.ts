import type { ReplyOf } from '@bayledger/contract/endpoint'
import type { SentEntry, SentSide } from '@bayledger/contract/entries'
import type { getEntriesAfter, getOrder } from '@bayledger/contract/orders'
import type { Draft } from '@bayledger/ledger/entry'
import { advance, type Folded, foldAll } from '@bayledger/ledger/fold'
import { drafted, type Foldable, layOnTop } from '@bayledger/ledger/fold/foldable'
import type { OrderState } from '@bayledger/ledger/state'
import type { Parcel } from './parcel.ts'

/** An order as the server sent it. */
export type OrderReply = ReplyOf<typeof getOrder>

/** What an order gained after an entry, as the server sent it. */
export type Gained = ReplyOf<typeof getEntriesAfter>

/** An order as a screen reads it: the folded state, and the personal texts behind its digests. */
export type ReadOrder = Omit<OrderReply, 'entries'> & {
  readonly entries: readonly Foldable[]
  readonly state: OrderState
  /** The text behind a digest; an erased or withheld one says so. */
  readonly personalText: (digest: string) => string
}

/** What a device wrote and has not sent yet, after the server's entries. */
export type Unsent = { readonly drafts: readonly Draft[]; readonly sides: readonly SentSide[] }

/** The held order with the entries that follow its last one; `null` where something between them is missing. */
export const withGained = (held: OrderReply, gained: Gained): OrderReply | null => {
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
    heldAlone: gained.heldAlone,
  }
}

/** The order as a screen reads it, with a device's own unsent drafts on top. */
export const readOrder = (reply: OrderReply, unsent: Unsent = { drafts: [], sides: [] }): ReadOrder => {
  const words = new Map([...reply.sides, ...unsent.sides].map(({ digest, text }) => [digest, text]))
  return {
    ...reply,
    entries: layOnTop(reply.entries.map(asFoldable), unsent.drafts),
    state: foldOnTop(reply, unsent.drafts).state,
    personalText: (digest) => words.get(digest) ?? '(not kept here)',
  }
}

/** The order as a screen of this device reads it, with what it wrote on top. The same object until either changes. */
export const readOnTop = (reply: OrderReply, onTop: readonly Parcel[]): ReadOrder => {
  const unsent = unsentOf(onTop, reply)
  const before = readBefore.get(reply)
  if (
    before &&
    isSameList(before.unsent.drafts, unsent.drafts) &&
    isSameList(before.unsent.sides, unsent.sides)
  )
    return before.read
  const read = readOrder(reply, unsent)
  readBefore.set(reply, { unsent, read })
  return read
}

const readBefore = new WeakMap<OrderReply, { readonly unsent: Unsent; readonly read: ReadOrder }>()

const isSameList = (one: readonly unknown[], other: readonly unknown[]): boolean =>
  one.length === other.length && one.every((member, index) => member === other[index])

/** The order folded with a device's own drafts on top. Drafts that follow those of the last time are added to them. */
export const foldOnTop = (reply: OrderReply, drafts: readonly Draft[]): Folded => {
  const base = foldedOf(reply)
  const before = laidOn.get(base)
  const goesOn = before !== undefined && isSameList(before.drafts, drafts.slice(0, before.drafts.length))
  const folded = goesOn
    ? drafts.slice(before.drafts.length).reduce(oneMore, before.folded)
    : drafts.reduce(oneMore, base)
  laidOn.set(base, { drafts, folded })
  return folded
}

const laidOn = new WeakMap<Folded, { readonly drafts: readonly Draft[]; readonly folded: Folded }>()

/** The order with one more draft on top. */
export const oneMore = (before: Folded, draft: Draft): Folded =>
  advance(before, drafted(draft, before.entries.length))

/**
 * What the server sent never changes, and every tap folds something on top of it: each entry is folded once. A hash stands
 * for all entries up to its own.
 */
const foldedOf = ({ entries }: OrderReply): Folded => {
  const [first] = entries
  const before = first && foldedBefore.get(first)
  const goesOn = before !== undefined && entries[before.count - 1]?.hash === before.hash
  if (goesOn && before.count === entries.length) return before.folded
  const folded = goesOn
    ? entries.slice(before.count).map(asFoldable).reduce(advance, before.folded)
    : foldAll(entries.map(asFoldable))
  const last = entries.at(-1)
  if (first && last) foldedBefore.set(first, { count: entries.length, hash: last.hash, folded })
  return folded
}

/** By the first entry of the order. */
const foldedBefore = new WeakMap<
  SentEntry,
  { readonly count: number; readonly hash: string; readonly folded: Folded }
>()

/** What this device wrote of an order and the server's ledger, as it was read here, does not hold yet. */
export const unsentOf = (onTop: readonly Parcel[], { orderId, entries }: OrderReply): Unsent => {
  const shopId = entries[0]?.shopId ?? ''
  const read = new Set(entries.map(({ id }) => id))
  const parcels = onTop.filter((parcel) => parcel.orderId === orderId)
  return {
    drafts: parcels.flatMap((parcel) =>
      parcel.entries.filter(({ id }) => !read.has(id)).map((entry) => asDraft(entry, parcel, shopId)),
    ),
    sides: parcels.flatMap(({ sides }) => sides),
  }
}

/** An entry of a parcel with what the server adds when it receives it. The same object each time. */
const asDraft = (entry: Parcel['entries'][number], { staffId, deviceId }: Parcel, shopId: string): Draft => {
  const before = draftsBefore.get(entry)
  if (before !== undefined) return before
  const draft = { ...entry, shopId, writtenBy: { kind: 'staff', staffId }, deviceId } as Draft
  draftsBefore.set(entry, draft)
  return draft
}

const draftsBefore = new WeakMap<Parcel['entries'][number], Draft>()

/** The server parsed each payload by its kind before it was admitted; here it is trusted. */
const asFoldable = (entry: SentEntry): Foldable => entry as Foldable
