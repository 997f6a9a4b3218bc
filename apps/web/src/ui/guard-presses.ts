import { type GuardEvent, type GuardState, guardStep, unguarded } from './press-guard.ts'

/**
 * The guard of this page. Buttons that are held report to it; `guardPresses` lets it hear every press before anything
 * else does.
 */
let state: GuardState<Element> = unguarded
let callOff: (() => void) | null = null

const take = (event: GuardEvent<Element>): boolean => {
  const answer = guardStep(state, event)
  state = answer.state
  if (answer.callsOffHold) {
    const told = callOff
    callOff = null
    told?.()
  }
  return answer.isDead
}

/** A button is being held; `onSecondFinger` is called if another finger comes down before it is over. */
export const holdBegins = (pointer: number, onSecondFinger: () => void): void => {
  callOff = onSecondFinger
  take({ kind: 'hold-begins', pointer })
}

/** The finger was lifted before the hold was complete. */
export const holdLetGo = (): void => {
  callOff = null
  take({ kind: 'hold-let-go' })
}

/** The hold is complete or was called off: nothing reacts until the finger has left and the rest has passed. */
export const holdEnds = (): void => {
  callOff = null
  take({ kind: 'hold-ends', at: performance.now() })
}

/** Hears every press of the page first and stops what must not count. Gives back a function that ends it. */
export function guardPresses(page: Window): () => void {
  const stopIf = (isDead: boolean, event: Event) => {
    if (!isDead) return
    event.preventDefault()
    event.stopImmediatePropagation()
  }
  const down = (event: PointerEvent) =>
    stopIf(
      take({
        kind: 'down',
        pointer: event.pointerId,
        isFirst: event.isPrimary,
        isTouch: event.pointerType === 'touch',
        control: controlAt(event.target),
        at: event.timeStamp,
      }),
      event,
    )
  const up = (event: PointerEvent) => {
    take({ kind: 'up', pointer: event.pointerId, at: event.timeStamp })
  }
  const click = (event: MouseEvent) =>
    stopIf(
      take({
        kind: 'click',
        pointer: event instanceof PointerEvent && event.pointerType !== '' ? event.pointerId : -1,
        control: controlAt(event.target),
        at: event.timeStamp,
      }),
      event,
    )
  page.addEventListener('pointerdown', down, true)
  page.addEventListener('pointerup', up, true)
  page.addEventListener('pointercancel', up, true)
  page.addEventListener('click', click, true)
  return () => {
    page.removeEventListener('pointerdown', down, true)
    page.removeEventListener('pointerup', up, true)
    page.removeEventListener('pointercancel', up, true)
    page.removeEventListener('click', click, true)
  }
}

/** What acts when it is pressed. A label and the field that it names are left to the browser. */
const controlAt = (target: EventTarget | null): Element | null =>
  target instanceof Element ? target.closest('button, a[href], summary, [role="button"]') : null
