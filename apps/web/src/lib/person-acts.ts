/** Within this time of a press or a key, what a page reads counts as read for a person. */
const lateMilliseconds = 60_000

let lastAct = Number.NEGATIVE_INFINITY

/** Notes each press and key from now on: what a page reads by itself must not keep a desk open that somebody left. */
export const watchActs = (page: EventTarget): void => {
  const note = () => {
    lastAct = performance.now()
  }
  for (const act of ['pointerdown', 'touchstart', 'keydown', 'wheel'])
    page.addEventListener(act, note, { capture: true, passive: true })
}

export const actedLately = (): boolean => performance.now() - lastAct < lateMilliseconds
