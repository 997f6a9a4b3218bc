import { useContext, useEffect, useRef } from 'react'
import { Button } from './button.tsx'
import { ControlsWords } from './controls-words.ts'
import './problem-notice.css'

/** What a problem reply says (RFC 9457), as far as a person needs it. */
export type ProblemWords = {
  /** What is wrong. */
  title: string
  /** Why, and what to do. */
  detail?: string | undefined
  /** Every field that is wrong, with what to do about it. */
  fields?: readonly { field: string; found: string; allowed: string }[] | undefined
  /** To name on the telephone; finds the server's own record of it. */
  requestId?: string | undefined
}

type ProblemNoticeProps = {
  problem: ProblemWords
  /** Offered as "Try again" where trying again can help. */
  onRetry?: () => void
}

/** A problem, announced at once and focused, so that nobody has to look for it. */
export function ProblemNotice({ problem, onRetry }: ProblemNoticeProps) {
  const { problem: says } = useContext(ControlsWords)
  const box = useRef<HTMLDivElement>(null)
  useEffect(() => box.current?.focus(), [])
  return (
    <div className="problem" role="alert" tabIndex={-1} ref={box}>
      <p className="problem-title">{problem.title}</p>
      {problem.detail === undefined ? null : <p>{problem.detail}</p>}
      {problem.fields === undefined || problem.fields.length === 0 ? null : (
        <ul className="problem-fields">
          {problem.fields.map((fault) => (
            <li key={`${fault.field} ${fault.found}`}>
              <span className="exact">{fault.field}</span>
              {says.field(fault.found, fault.allowed)}
            </li>
          ))}
        </ul>
      )}
      {onRetry === undefined ? null : <Button onClick={onRetry}>{says.tryAgain}</Button>}
      {problem.requestId === undefined ? null : (
        <p className="quiet">
          {says.reference} <span className="exact">{problem.requestId}</span>
        </p>
      )}
    </div>
  )
}
