import { useSyncExternalStore } from 'react'

/**
 * Whether this tablet accepts input. `switching`: someone asked to change the person; the current one is still
 * signed in. Locking hides the work and keeps its state.
 */
export type Door = 'open' | 'locked' | 'switching'

let door: Door = 'open'
const listeners = new Set<() => void>()

const set = (next: Door) => {
  door = next
  for (const listener of listeners) listener()
}

export const lockTablet = (): void => set('locked')
export const askForPerson = (): void => {
  if (door === 'open') set('switching')
}
export const openDoor = (): void => set('open')

/** Whether nobody is at this tablet: nothing of an order is read then. */
export const isLocked = (): boolean => door === 'locked'

export const useDoor = (): Door =>
  useSyncExternalStore(
    (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    () => door,
  )
