/** What presses asked for and the screen has not begun yet, in the order of the presses. */
let waiting: readonly (() => void)[] = []
let isSet = false

/** Does now what waits for the screen. */
const doNow = (): void => {
  const due = waiting
  waiting = []
  for (const work of due) work()
}

/** Where nothing is drawn, nothing is waited for. */
const isDrawn = (): boolean => globalThis.document?.visibilityState === 'visible'

/**
 * Does what a press asks for once the screen has shown that it was taken: after the next picture, or before the next press,
 * whichever comes first. So a press is answered at once, however much follows from it, and none acts on a screen that
 * another one was about to leave.
 */
export const afterAnswer = (work: () => void): void => {
  waiting = [...waiting, work]
  if (!isDrawn()) doNow()
  else if (!isSet) {
    isSet = true
    requestAnimationFrame(() =>
      setTimeout(() => {
        isSet = false
        doNow()
      }),
    )
  }
}

/** Resolves once the screen has shown that a press was taken. */
export const answered = (): Promise<void> => new Promise(afterAnswer)

/** Has every press of the page find what the one before it led to. Gives back a function that ends it. */
export function finishBeforePresses(page: Window): () => void {
  const presses = ['pointerdown', 'keydown', 'pagehide'] as const
  const click = (event: MouseEvent) => {
    // No pointer made this click: it begins with it.
    if (event.detail === 0) doNow()
  }
  for (const press of presses) page.addEventListener(press, doNow, true)
  page.addEventListener('click', click, true)
  return () => {
    for (const press of presses) page.removeEventListener(press, doNow, true)
    page.removeEventListener('click', click, true)
  }
}
