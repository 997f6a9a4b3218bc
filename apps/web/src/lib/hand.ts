import { useSyncExternalStore } from 'react'

/** The hand that presses: the pad is on its side of the screen, the drawing on the other. */
export type Hand = 'right' | 'left'

const key = 'bayledger.hand'
const listeners = new Set<() => void>()

/** Puts the hand that this tablet was left with on the page; call once before the first drawing. */
export function restoreHand(): void {
  document.documentElement.dataset.hand = storedHand()
}

/** The present hand and a way to the other one; kept on this tablet. */
export function useHand(): [Hand, (hand: Hand) => void] {
  const hand = useSyncExternalStore(subscribe, presentHand)
  return [hand, setHand]
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

const presentHand = (): Hand => (document.documentElement.dataset.hand === 'left' ? 'left' : 'right')

function setHand(hand: Hand): void {
  document.documentElement.dataset.hand = hand
  try {
    localStorage.setItem(key, hand)
  } catch {
    // Storage may be full or forbidden; the hand then lasts until the page is loaded again.
  }
  for (const listener of listeners) listener()
}

function storedHand(): Hand {
  try {
    return localStorage.getItem(key) === 'left' ? 'left' : 'right'
  } catch {
    return 'right'
  }
}
