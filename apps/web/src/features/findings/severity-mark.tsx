import type { ReactNode } from 'react'
import './severity-mark.css'

/** A finding's severity, by word and shape, in one ink. */
export type Severity =
  | 'do-not-drive'
  | 'cause'
  | 'also-found'
  | 'for-information'
  | 'not-checked'
  | 'good-as-measured'

type SeverityMarkProps = {
  severity: Severity
  /** In the language of whoever reads it. */
  word: string
  children?: ReactNode
}

/** A finding's shape with its word. */
export function SeverityMark({ severity, word, children }: SeverityMarkProps) {
  return (
    <div className={`severity severity-${severity}`}>
      <p className="severity-word">
        {severity === 'good-as-measured' ? <Tick /> : null}
        {word}
      </p>
      {children}
    </div>
  )
}

function Tick() {
  return (
    <svg viewBox="0 0 16 16" className="severity-tick" aria-hidden="true">
      <path d="M2 8.5 6.2 13 14 3" />
    </svg>
  )
}
