import { type KeyboardEvent, type PointerEvent, useEffect, useId, useRef, useState } from 'react'
import { holdBegins, holdEnds, holdLetGo } from './guard-presses.ts'
import {
  type CalledOff,
  type HoldEvent,
  type HoldState,
  holdMilliseconds,
  holdStep,
  resting,
  secondPressWithinMilliseconds,
} from './hold-steps.ts'
import { isOn } from './use-press.ts'
import './button.css'
import './hold-button.css'

type HoldButtonProps = {
  /** What is done, as a verb: "Seal round 2". */
  label: string
  onHeld: () => void
  whyNot?: string | undefined
  busy?: boolean
}

const calledOffWords: Readonly<Record<CalledOff, string>> = {
  left: 'Nothing was recorded: the finger left the button. Hold again.',
  'second-finger': 'Nothing was recorded: a second finger touched the screen. Hold again with one.',
  'screen-turned': 'Nothing was recorded: the screen turned. Hold again.',
}

/**
 * For what cannot be undone: held for 0.6 s by finger, mouse, Enter or Space, or pressed a second time. It counts only
 * if it begins and ends on this button, under one finger; until that finger has left, nothing else reacts.
 */
export function HoldButton({ label, onHeld, whyNot, busy = false }: HoldButtonProps) {
  const [state, setState] = useState<HoldState>(resting)
  // The newest state outside React's own: two events may come before it draws again.
  const current = useRef<HoldState>(state)
  const byPointerOrKey = useRef(false)
  const pointer = useRef<number | null>(null)
  const noteId = useId()
  const held = whyNot !== undefined || busy

  const take = (event: HoldEvent) => {
    if (held) return
    const next = holdStep(current.current, event)
    const wasPressed = current.current.step === 'pressed'
    current.current = next.state
    setState(next.state)
    if (next.done || (wasPressed && next.state.step === 'resting')) {
      pointer.current = null
      holdEnds()
    } else if (wasPressed && next.state.step === 'armed') holdLetGo()
    if (next.done) onHeld()
  }
  const callOff = (why: CalledOff) => take({ kind: 'call-off', why, at: performance.now() })
  const newest = useRef({ take, callOff })
  newest.current = { take, callOff }

  useEffect(() => {
    if (state.step === 'resting') return
    const wait = state.step === 'pressed' ? holdMilliseconds : secondPressWithinMilliseconds
    const timer = setTimeout(() => newest.current.take({ kind: 'time', at: performance.now() }), wait + 1)
    const width = window.innerWidth
    const turned = () => {
      if (window.innerWidth !== width) newest.current.callOff('screen-turned')
    }
    window.addEventListener('resize', turned)
    return () => {
      clearTimeout(timer)
      window.removeEventListener('resize', turned)
    }
  }, [state])

  // What comes up in its place, for whatever reason, is dead until the finger was lifted.
  useEffect(
    () => () => {
      if (current.current.step === 'pressed') holdEnds()
    },
    [],
  )

  // Instants are when the finger did it, not when a busy tablet got to it: a short press stays short.
  const down = (event: PointerEvent) => {
    if (event.button !== 0 || held) return
    byPointerOrKey.current = true
    if (!event.isPrimary) {
      current.current = { step: 'resting', calledOff: 'second-finger' }
      return setState(current.current)
    }
    pointer.current = event.pointerId
    holdBegins(event.pointerId, () => newest.current.callOff('second-finger'))
    take({ kind: 'down', at: event.timeStamp })
  }
  const isHoldKey = (event: KeyboardEvent) => event.key === 'Enter' || event.key === ' '
  return (
    <div className="hold">
      <button
        type="button"
        className={`button button-wide hold-button hold-${state.step}`}
        aria-disabled={held || undefined}
        aria-busy={busy || undefined}
        aria-describedby={noteId}
        onPointerDown={down}
        onPointerMove={(event) => {
          if (event.pointerId === pointer.current && !isOn(event)) callOff('left')
        }}
        onPointerUp={(event) => {
          if (event.pointerId !== pointer.current) return
          pointer.current = null
          take(isOn(event) ? { kind: 'up', at: event.timeStamp } : leftAt())
        }}
        onPointerCancel={(event) => {
          if (event.pointerId === pointer.current) callOff('left')
        }}
        onKeyDown={(event) => {
          if (!isHoldKey(event)) return
          event.preventDefault()
          byPointerOrKey.current = true
          if (!event.repeat) take({ kind: 'down', at: event.timeStamp })
        }}
        onKeyUp={(event) => {
          if (!isHoldKey(event)) return
          event.preventDefault()
          take({ kind: 'up', at: event.timeStamp })
          byPointerOrKey.current = false
        }}
        onBlur={() => callOff('left')}
        onContextMenu={(event) => event.preventDefault()}
        onClick={(event) => {
          // A click that no pointer or key began comes from assistive technology: a whole press at once.
          if (!byPointerOrKey.current) take({ kind: 'press', at: event.timeStamp })
          byPointerOrKey.current = false
        }}
      >
        <span className="hold-progress" aria-hidden="true" />
        <span className="hold-label">{state.step === 'armed' ? `Press again: ${label}` : label}</span>
      </button>
      <p id={noteId} className="button-reason" role="status">
        {whyNot ??
          (state.step === 'armed'
            ? 'Pressed once. Press again to confirm.'
            : state.step === 'resting' && state.calledOff !== null
              ? calledOffWords[state.calledOff]
              : 'Hold, or press twice with a pause between.')}
      </p>
    </div>
  )
}

const leftAt = (): HoldEvent => ({ kind: 'call-off', why: 'left', at: performance.now() })
