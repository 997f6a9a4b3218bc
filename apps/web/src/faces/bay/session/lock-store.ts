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

let pinAt: number | null = null

/** The person who is signed in has just typed their PIN. */
export const notePin = (): void => {
  pinAt = performance.now()
}

/** How long a PIN that was typed stands for the person at the tablet (our own bound, no source). */
const pinStandsMilliseconds = 120_000

/** Whether the PIN was typed so lately that the person at the tablet is the one who is signed in. */
export const isPinFresh = (): boolean => pinAt !== null && performance.now() - pinAt <= pinStandsMilliseconds

export const useDoor = (): Door =>
  useSyncExternalStore(
    (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    () => door,
  )
