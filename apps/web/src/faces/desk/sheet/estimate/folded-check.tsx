import type { ReactNode } from 'react'

type FoldedCheckProps = {
  summary: string
  /** What the verdict is called for a screen reader. */
  verdictName: string
  /** Sentence by sentence; `null` while too little is entered. */
  says: readonly string[] | null
  /** What is to be entered first. */
  toEnter: string
  /** What comes after the verdict and is checked for itself. */
  after?: ReactNode
  children: ReactNode
}

/** A computation that an advisor opens when they need it: its fields, then what they come to. */
export function FoldedCheck({ summary, verdictName, says, toEnter, after, children }: FoldedCheckProps) {
  return (
    <details>
      <summary>{summary}</summary>
      <div className="stack">
        {children}
        <div role="status" aria-label={verdictName}>
          {says === null ? (
            <p className="quiet">{toEnter}</p>
          ) : (
            says.map((sentence) => <p key={sentence}>{sentence}</p>)
          )}
        </div>
        {after}
      </div>
    </details>
  )
}
