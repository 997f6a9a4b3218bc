import type { ReactNode } from 'react'
import { usePress } from './use-press.ts'
import './number-pad.css'

type PressKeyProps = {
  /** What a screen reader says. */
  name: string
  onPress: () => void
  look?: 'usual' | 'small'
  children: ReactNode
}

/** One key of a pad of our own: no press is lost, however fast and by however many fingers they come. */
export function PressKey({ name, onPress, look = 'usual', children }: PressKeyProps) {
  return (
    <button
      type="button"
      className={look === 'small' ? 'pad-key pad-key-small' : 'pad-key'}
      aria-label={name}
      {...usePress(onPress)}
    >
      {children}
    </button>
  )
}
