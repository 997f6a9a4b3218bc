import type { Author, Draft, Entry, Given } from '../entry.ts'
import type { Kind } from '../registry.ts'
import type { OrderState, Recorded, Written } from '../state.ts'

/**
 * What `fold` reads: an entry from the server, or a device's own unsent draft after it, with the number that it would
 * get. Only an entry from the server has a time of receipt and a hash.
 */
export type Foldable = {
  [K in Kind]: Omit<Extract<Draft, { kind: K }>, never> & {
    readonly seq: number
    readonly given: Given
    readonly receivedAt: string | null
    readonly hash: string | null
  }
}[Kind]
export type FoldableOf<K extends Kind> = Extract<Foldable, { kind: K }>

/** How each kind changes the state. It handles every admitted entry in every admitted order. */
export type Appliers<K extends Kind> = {
  readonly [Name in K]: (state: OrderState, entry: FoldableOf<Name>) => OrderState
}

/** Who did what an entry says: its writer, or the person who sealed a torque check with their PIN on another's tablet. */
export const doerOf = (entry: Foldable | Entry): Author =>
  entry.kind === 'torque.checked' && entry.payload.checkedBy
    ? { kind: 'staff', staffId: entry.payload.checkedBy.staffId }
    : entry.writtenBy

export const writtenOf = (entry: Foldable | Entry): Written => ({
  entryId: entry.id,
  seq: entry.seq,
  by: doerOf(entry),
  deviceId: entry.deviceId,
  writtenAt: entry.writtenAt,
  receivedAt: entry.receivedAt,
})

export const recorded = <T extends object>(fact: T, entry: Foldable): Recorded<T> => ({
  ...fact,
  written: writtenOf(entry),
})

/** A device's unsent draft after the entry with this number, numbered as the server would number it. */
export const drafted = (draft: Draft, after: number): Foldable => ({
  ...draft,
  seq: after + 1,
  given: {},
  receivedAt: null,
  hash: null,
})

/** Adds a device's unsent drafts after the server's entries. */
export const layOnTop = (entries: readonly Foldable[], drafts: readonly Draft[]): Foldable[] => [
  ...entries,
  ...drafts.map((draft, index) => drafted(draft, entries.length + index)),
]
