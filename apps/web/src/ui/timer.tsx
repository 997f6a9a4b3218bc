import { useEffect, useState } from 'react'
import { Button } from './button.tsx'
import { clockWords, timerWords } from './timer-words.ts'
import './timer.css'

type TimerProps = {
  /** What is timed: "Watch the light". */
  label: string
  /** In seconds; `null`: it only counts. */
  target: number | null
  /** Seconds that have passed since it was started; `null`: not yet. The watch lives with the caller. */
  passed: (() => number) | null
  onStart: () => void
}

/** A watch on the screen: started by a press, counted by the tablet, never a condition by itself. */
export function Timer({ label, target, passed, onStart }: TimerProps) {
  const [, setTick] = useState(0)
  const runs = passed !== null
  useEffect(() => {
    if (!runs) return
    const ticking = setInterval(() => setTick((tick) => tick + 1), 250)
    return () => clearInterval(ticking)
  }, [runs])
  if (passed === null)
    return (
      <Button className="timer" onClick={onStart}>
        {target === null ? label : `${label} · ${clockWords(target)}`}
      </Button>
    )
  const seconds = passed()
  const isUp = target !== null && seconds >= target
  return (
    <p className={isUp ? 'timer timer-up' : 'timer'} role="timer">
      {label}: <strong>{timerWords(seconds, target)}</strong>
    </p>
  )
}
