import { useEffect, useState } from 'react'
import { Button } from './button.tsx'
import { clockWords, timerWords } from './timer-words.ts'
import './timer.css'

type TimerProps = {
  /** What is timed: "Watch the light". */
  label: string
  /** In seconds; `null`: it only counts. */
  target: number | null
  /** When it was started, in milliseconds of the tablet's clock; `null`: not yet. It lives with the caller. */
  startedAt: number | null
  onStart: (at: number) => void
}

/** A watch on the screen: started by a press, counted by the tablet, never a condition by itself. */
export function Timer({ label, target, startedAt, onStart }: TimerProps) {
  const [now, setNow] = useState(() => Date.now())
  useEffect(() => {
    if (startedAt === null) return
    setNow(Date.now())
    const ticking = setInterval(() => setNow(Date.now()), 250)
    return () => clearInterval(ticking)
  }, [startedAt])
  if (startedAt === null)
    return (
      <Button className="timer" onClick={() => onStart(Date.now())}>
        {target === null ? label : `${label} · ${clockWords(target)}`}
      </Button>
    )
  const passed = (now - startedAt) / 1000
  const isUp = target !== null && passed >= target
  return (
    <p className={isUp ? 'timer timer-up' : 'timer'} role="timer">
      {label}: <strong>{timerWords(passed, target)}</strong>
    </p>
  )
}
