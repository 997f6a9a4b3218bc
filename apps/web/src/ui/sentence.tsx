import type { ReactNode } from 'react'
import './sentence.css'

/** The one sentence that says what the status is. */
export function Sentence({ children }: { children: ReactNode }) {
  return <p className="sentence">{children}</p>
}

/** A line that a screen reader announces when it changes. It is in the page from the start, even if empty. */
export function StatusLine({ children }: { children?: ReactNode }) {
  return (
    <p className="status-line" role="status" aria-live="polite">
      {children}
    </p>
  )
}
