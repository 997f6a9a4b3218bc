import { type ReactNode, useEffect, useRef } from 'react'
import { problemText } from '../../../lib/problem.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import './step-screen.css'

export type StepHead = {
  /** What to do, in six words or so. */
  title: string
  /** Beside the title: another way to record this, another part of the same wheel. */
  beside?: ReactNode
  /** The one figure, with its source below. */
  figure?: ReactNode
  how?: ReactNode
  caution?: string | null
  /** It was opened by a control that stays on the screen: the heading takes the focus from it. */
  takesFocus?: boolean
}

type StepScreenProps = StepHead & {
  problem?: unknown
  children?: ReactNode
  /** In a column of its own, beside the rest: the studs of a wheel. */
  drawing?: ReactNode
  /** Where the cells need the room, the instructions are below them. */
  howBelow?: boolean
  /** Rises from the bottom: keys and the one wide button. */
  pad?: ReactNode
}

/** The right side of the bay: one step and one figure. */
export function StepScreen({
  title,
  beside,
  figure,
  how,
  caution,
  problem = null,
  children,
  howBelow = false,
  drawing,
  pad,
  takesFocus = false,
}: StepScreenProps) {
  const heading = useRef<HTMLHeadingElement>(null)
  // What closed the last step is gone, and the focus with it: whoever works by keys, or hears the screen, goes on here.
  useEffect(() => {
    if (heading.current?.textContent === title && (takesFocus || document.activeElement === document.body))
      heading.current.focus({ preventScroll: true })
  }, [title, takesFocus])
  const words = how === undefined || how === '' ? null : <div className="step-how">{how}</div>
  return (
    <>
      <div className={drawing === undefined ? 'bay-step' : 'bay-step bay-step-drawn'}>
        <div className="step-head">
          <h1 ref={heading} className="step-title" tabIndex={-1}>
            {title}
          </h1>
          {beside === undefined ? null : <div className="step-beside">{beside}</div>}
        </div>
        {problem === null ? null : <ProblemNotice problem={problemText(problem)} />}
        {figure === undefined ? null : <div className="step-figure">{figure}</div>}
        {howBelow ? null : words}
        {children}
        {howBelow ? words : null}
        {caution && drawing === undefined ? <p className="step-caution">{caution}</p> : null}
        {drawing === undefined ? null : (
          <div className="step-drawing">
            {drawing}
            {caution ? <p className="step-caution">{caution}</p> : null}
          </div>
        )}
      </div>
      {pad === undefined ? null : <div className="bay-pad">{pad}</div>}
    </>
  )
}
