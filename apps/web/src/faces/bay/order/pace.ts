import { useState } from 'react'
import type { Pace } from '../../../features/arrival/arrival-tasks.ts'

const keptUnder = 'bayledger.pace'

/** The pace of the arrival check, remembered on this tablet. */
export const usePace = (): [Pace, (pace: Pace) => void] => {
  const [pace, setPace] = useState<Pace>(() =>
    localStorage.getItem(keptUnder) === 'wheel-by-wheel' ? 'wheel-by-wheel' : 'task-by-task',
  )
  return [
    pace,
    (next) => {
      localStorage.setItem(keptUnder, next)
      setPace(next)
    },
  ]
}
