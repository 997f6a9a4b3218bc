import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react'
import {
  type HoldEvent,
  type HoldState,
  holdMilliseconds,
  holdStep,
  secondPressWithinMilliseconds,
} from './hold-steps.ts'
import './button.css'
import './hold-button.css'

type HoldButtonProps = {
  /** What is done, as a verb: "Seal round 2". */
  label: string
  onHeld: () => void
  whyNot?: string | undefined
  busy?: boolean
}

/** For what cannot be undone: held for 0.6 s by finger, mouse, Enter or Space, or pressed a second time. */
export function HoldButton({ label, onHeld, whyNot, busy = false }: HoldButtonProps) {
  const [state, setState] = useState<HoldState>({ step: 'resting' })
  // The newest state outside React's own: two events may come before it draws again.
  const current = useRef<HoldState>(state)
  const byPointerOrKey = useRef(false)
  const noteId = useId()
  const held = whyNot !== undefined || busy

  const take = (kind: HoldEvent['kind']) => {
    if (held) return
    const next = holdStep(current.current, { kind, at: performance.now() })
    current.current = next.state
    setState(next.state)
    if (next.done) onHeld()
  }
  const newestTake = useRef(take)
  newestTake.current = take

  useEffect(() => {
    if (state.step === 'resting') return
    const wait = state.step === 'pressed' ? holdMilliseconds : secondPressWithinMilliseconds
    const timer = setTimeout(() => newestTake.current('time'), wait + 1)
    return () => clearTimeout(timer)
  }, [state])

  const isHoldKey = (event: KeyboardEvent) => event.key === 'Enter' || event.key === ' '
  return (
    <div className="hold">
      <button
        type="button"
        className={`button button-wide hold-button hold-${state.step}`}
        aria-disabled={held || undefined}
        aria-busy={busy || undefined}
        aria-describedby={noteId}
        onPointerDown={(event) => {
          if (event.button !== 0) return
          byPointerOrKey.current = true
          take('down')
        }}
        onPointerUp={() => take('up')}
        onPointerLeave={() => take('leave')}
        onPointerCancel={() => take('leave')}
        onKeyDown={(event) => {
          if (!isHoldKey(event)) return
          event.preventDefault()
          byPointerOrKey.current = true
          if (!event.repeat) take('down')
        }}
        onKeyUp={(event) => {
          if (!isHoldKey(event)) return
          event.preventDefault()
          take('up')
          byPointerOrKey.current = false
        }}
        onBlur={() => take('leave')}
        onContextMenu={(event) => event.preventDefault()}
        onClick={() => {
          // A click that no pointer or key began comes from assistive technology: a whole press at once.
          if (!byPointerOrKey.current) take('press')
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
            : 'Hold, or press twice with a pause between.')}
      </p>
    </div>
  )
}
