/** Shorter touches come from rain, a sleeve or a splash, not from a finger [common practice, no source]. */
const ghostMilliseconds = 60

/**
 * Swallows every click below `root` that a touch shorter than 60 ms made. Mouse, keyboard and assistive
 * technology are left alone. Gives back a function that stops it.
 */
export function ignoreGhostTaps(root: HTMLElement): () => void {
  let touchedAt = 0
  let touchLasted = Number.POSITIVE_INFINITY
  const down = (event: PointerEvent) => {
    touchedAt = event.timeStamp
  }
  const up = (event: PointerEvent) => {
    touchLasted = event.pointerType === 'touch' ? event.timeStamp - touchedAt : Number.POSITIVE_INFINITY
  }
  const click = (event: MouseEvent) => {
    const isGhost =
      event instanceof PointerEvent && event.pointerType === 'touch' && touchLasted < ghostMilliseconds
    if (!isGhost) return
    event.preventDefault()
    event.stopImmediatePropagation()
  }
  root.addEventListener('pointerdown', down, true)
  root.addEventListener('pointerup', up, true)
  root.addEventListener('click', click, true)
  return () => {
    root.removeEventListener('pointerdown', down, true)
    root.removeEventListener('pointerup', up, true)
    root.removeEventListener('click', click, true)
  }
}
