import { useSyncExternalStore } from 'react'

/** The bay's two looks: for the dark under a lift, and for the sun on the apron. */
export type BayLook = 'dark-bay' | 'bright-apron'

const key = 'bayledger.look'
const listeners = new Set<() => void>()

/** Puts the look that this tablet was left in on the page; call once before the first drawing. */
export function restoreLook(): void {
  document.documentElement.dataset.look = storedLook() ?? 'dark-bay'
}

/** The present look and a way to the other one; kept on this tablet. */
export function useLook(): [BayLook, (look: BayLook) => void] {
  const look = useSyncExternalStore(subscribe, presentLook)
  return [look, setLook]
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

function presentLook(): BayLook {
  return document.documentElement.dataset.look === 'bright-apron' ? 'bright-apron' : 'dark-bay'
}

function setLook(look: BayLook): void {
  document.documentElement.dataset.look = look
  try {
    localStorage.setItem(key, look)
  } catch {
    // Storage may be full or forbidden; the look then lasts until the page is loaded again.
  }
  for (const listener of listeners) listener()
}

function storedLook(): BayLook | null {
  try {
    const stored = localStorage.getItem(key)
    return stored === 'dark-bay' || stored === 'bright-apron' ? stored : null
  } catch {
    return null
  }
}
