import { type ReactNode, useContext } from 'react'
import { wordsOf } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { SetAsideContext } from '../work/set-aside-context.ts'
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
}

type StepScreenProps = StepHead & {
  problem?: unknown
  children?: ReactNode
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
  pad,
}: StepScreenProps) {
  const setAside = useContext(SetAsideContext)
  return (
    <>
      <div className="bay-step">
        <div className="step-head">
          <h1 className="step-title">{title}</h1>
          {beside === undefined ? null : <div className="step-beside">{beside}</div>}
        </div>
        {problem === null ? null : <ProblemNotice problem={wordsOf(problem)} />}
        {figure === undefined ? null : <div className="step-figure">{figure}</div>}
        {how === undefined || how === '' ? null : <div className="step-how">{how}</div>}
        {children}
        {caution ? <p className="step-caution">{caution}</p> : null}
        {setAside === null ? null : (
          <Button className="step-aside" onClick={setAside}>
            Set this step aside
          </Button>
        )}
      </div>
      {pad === undefined ? null : <div className="bay-pad">{pad}</div>}
    </>
  )
}
