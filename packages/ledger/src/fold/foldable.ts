import type { Draft, Entry, Given } from '../entry.ts'
import type { Kind } from '../registry.ts'
import type { OrderState, Recorded, Written } from '../state.ts'

/**
 * What `fold` reads: an entry of the server, or a device's own unsent draft laid on top of it with the number
 * that it would get. Only a sent one has a time of receipt and a hash.
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

/** How each kind changes the state. Total: any admitted entry may come, in any admitted order. */
export type Appliers<K extends Kind> = {
  readonly [Name in K]: (state: OrderState, entry: FoldableOf<Name>) => OrderState
}

export const writtenOf = (entry: Foldable | Entry): Written => ({
  entryId: entry.id,
  seq: entry.seq,
  by: entry.writtenBy,
  deviceId: entry.deviceId,
  writtenAt: entry.writtenAt,
  receivedAt: entry.receivedAt,
})

export const recorded = <T extends object>(fact: T, entry: Foldable): Recorded<T> => ({
  ...fact,
  written: writtenOf(entry),
})

/** Lays a device's unsent drafts on top of what the server holds, numbered as they would be. */
export const layOnTop = (entries: readonly Foldable[], drafts: readonly Draft[]): Foldable[] => {
  const head = entries.length
  return [
    ...entries,
    ...drafts.map((draft, index) => ({
      ...draft,
      seq: head + index + 1,
      given: {},
      receivedAt: null,
      hash: null,
    })),
  ]
}
