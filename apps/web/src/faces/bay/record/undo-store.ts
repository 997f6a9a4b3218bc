import { useSyncExternalStore } from 'react'

/** The newest entry of this tablet that its writer may still undo. */
export type Undoable = {
  readonly entryId: string
  readonly orderId: string
  readonly says: string
  readonly staffId: string
  /** On the tablet's own steady clock, in milliseconds. */
  readonly until: number
}

export const undoMilliseconds = 10_000

let undoable: Undoable | null = null
const listeners = new Set<() => void>()

/** Ends the offer for this entry, unless a newer one was written meanwhile. */
export const endUndo = (entryId: string): void => {
  if (undoable?.entryId === entryId) offerUndo(null)
}

export const offerUndo = (next: Undoable | null): void => {
  undoable = next
  for (const listener of listeners) listener()
}

export const useUndoable = (): Undoable | null =>
  useSyncExternalStore(
    (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    () => undoable,
  )
