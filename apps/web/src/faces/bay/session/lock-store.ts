import { useSyncExternalStore } from 'react'

/**
 * Whether this tablet takes anything in. `switching`: somebody asked for another person, the present one is still
 * signed in. Locking hides the work and keeps it as it stands.
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

export const useDoor = (): Door =>
  useSyncExternalStore(
    (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    () => door,
  )
