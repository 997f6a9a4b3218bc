import type { ReactNode } from 'react'
import './sentence.css'

/** The one sentence that says how things stand. */
export function Sentence({ children }: { children: ReactNode }) {
  return <p className="sentence">{children}</p>
}

/** A line that a screen reader speaks when it changes. It stands in the page from the start, empty or not. */
export function StatusLine({ children }: { children?: ReactNode }) {
  return (
    <p className="status-line" role="status" aria-live="polite">
      {children}
    </p>
  )
}
