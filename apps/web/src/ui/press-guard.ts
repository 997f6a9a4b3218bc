import { ghostMilliseconds } from './hold-steps.ts'

/** After a hold is complete or called off, nothing reacts for so long after the last finger has left. */
export const restMilliseconds = 300

/**
 * Which presses count, as a machine without a clock of its own; `control` is whatever identifies the button or link
 * that a press is on. A press ends where it began: a click on another control, or on one that came up under the finger,
 * does nothing.
 */
export type GuardState<Control> = {
  /** Fingers on the screen, and the mouse button, by their pointer. */
  readonly down: ReadonlyMap<number, Press<Control>>
  /** The newest press of each pointer that has ended; its click is still to come. */
  readonly ended: Press<Control> | null
  /** The pointer that is holding a button down. */
  readonly holder: number | null
  /** Set by a hold that ended; `liftedAt`: since when no finger is on the screen. */
  readonly rest: { readonly liftedAt: number | null } | null
}

type Press<Control> = {
  readonly pointer: number
  readonly control: Control | null
  readonly at: number
  readonly isTouch: boolean
  readonly lasted: number
  readonly isDead: boolean
}

export type GuardEvent<Control> =
  | {
      readonly kind: 'down'
      readonly pointer: number
      /** No other finger is on the screen. */
      readonly isFirst: boolean
      readonly isTouch: boolean
      readonly control: Control | null
      readonly at: number
    }
  | { readonly kind: 'up'; readonly pointer: number; readonly at: number }
  | {
      readonly kind: 'click'
      readonly pointer: number
      readonly control: Control | null
      readonly at: number
    }
  | { readonly kind: 'hold-begins'; readonly pointer: number }
  | { readonly kind: 'hold-let-go' }
  /** Complete, or called off: the finger is still down. */
  | { readonly kind: 'hold-ends'; readonly at: number }

export type GuardAnswer<Control> = {
  readonly state: GuardState<Control>
  /** The event must reach nothing. */
  readonly isDead: boolean
  /** A second finger came down during a hold. */
  readonly callsOffHold: boolean
}

export const unguarded: GuardState<never> = { down: new Map(), ended: null, holder: null, rest: null }

export function guardStep<Control>(
  state: GuardState<Control>,
  event: GuardEvent<Control>,
): GuardAnswer<Control> {
  switch (event.kind) {
    case 'down':
      return comeDown(state, event)
    case 'up':
      return alive(lift(state, event.pointer, event.at))
    case 'click':
      return { state, isDead: isDeadClick(state, event), callsOffHold: false }
    case 'hold-begins':
      return alive({ ...state, holder: event.pointer })
    case 'hold-let-go':
      return alive({ ...state, holder: null })
    case 'hold-ends':
      return alive(endHold(state, event.at))
  }
}

const alive = <Control>(state: GuardState<Control>): GuardAnswer<Control> => ({
  state,
  isDead: false,
  callsOffHold: false,
})

const comeDown = <Control>(
  before: GuardState<Control>,
  { pointer, isFirst, isTouch, control, at }: Extract<GuardEvent<Control>, { kind: 'down' }>,
): GuardAnswer<Control> => {
  // The browser may never report how an earlier touch ended; the first finger of a new one proves that it did.
  const state = isFirst && before.down.size > 0 ? allLifted(before, at) : before
  const duringHold = state.holder !== null && state.holder !== pointer
  const rested = isRested(state, at)
  const isDead = duringHold || !rested
  const down = new Map(state.down).set(pointer, { pointer, control, at, isTouch, lasted: 0, isDead })
  const next = { ...state, down, rest: rested ? null : { liftedAt: null } }
  return { state: duringHold ? endHold(next, at) : next, isDead, callsOffHold: duringHold }
}

const lift = <Control>(state: GuardState<Control>, pointer: number, at: number): GuardState<Control> => {
  const press = state.down.get(pointer)
  if (press === undefined) return state
  const down = new Map(state.down)
  down.delete(pointer)
  return {
    ...state,
    down,
    ended: { ...press, lasted: at - press.at },
    rest: state.rest !== null && down.size === 0 ? { liftedAt: at } : state.rest,
  }
}

const allLifted = <Control>(state: GuardState<Control>, at: number): GuardState<Control> => ({
  down: new Map(),
  ended: null,
  holder: null,
  rest: state.rest === null ? null : { liftedAt: at },
})

/** Every finger that is down now is dead until it was lifted. */
const endHold = <Control>(state: GuardState<Control>, at: number): GuardState<Control> => ({
  ...state,
  holder: null,
  down: new Map([...state.down].map(([pointer, press]) => [pointer, { ...press, isDead: true }])),
  rest: { liftedAt: state.down.size === 0 ? at : null },
})

const isRested = <Control>({ rest }: GuardState<Control>, at: number): boolean =>
  rest === null || (rest.liftedAt !== null && at - rest.liftedAt >= restMilliseconds)

const isDeadClick = <Control>(
  state: GuardState<Control>,
  { pointer, control, at }: Extract<GuardEvent<Control>, { kind: 'click' }>,
): boolean => {
  const { ended } = state
  const press = ended?.pointer === pointer ? ended : null
  // A click that no pointer made comes from a key or from assistive technology.
  if (press === null) return pointer >= 0 && !isRested(state, at)
  if (press.isDead || !isRested(state, at)) return true
  if (press.isTouch && press.lasted < ghostMilliseconds) return true
  return control !== null && press.control !== control
}
