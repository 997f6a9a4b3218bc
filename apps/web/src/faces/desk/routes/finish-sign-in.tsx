import type { Awaited } from '@bayledger/contract/endpoint'
import { getSession } from '@bayledger/contract/sessions'
import { useState } from 'react'
import { call } from '../../../lib/api-client.ts'
import { problemText } from '../../../lib/problem.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { ChoosePassword } from './choose-password.tsx'
import { TurnOnSecondStep } from './turn-on-second-step.tsx'

type FinishSignInProps = {
  awaits: Awaited
  staffId: string
  /** The password with which they signed in. */
  given: string
  onDone: () => unknown
}

/** What has to be done after a sign-in before the desk opens, one thing after the other. */
export function FinishSignIn({ awaits: first, staffId, given, onDone }: FinishSignInProps) {
  const [awaits, setAwaits] = useState(first)
  const [isLeft, setLeft] = useState(false)
  const [problem, setProblem] = useState<unknown>(null)
  const goOn = async () => {
    setProblem(null)
    try {
      const next = (await call(getSession, {})).awaits
      if (next === undefined) onDone()
      else if (next === awaits) setLeft(true)
      else setAwaits(next)
    } catch (thrown) {
      setProblem(thrown)
    }
  }
  return (
    <div className="stack">
      {awaits === 'password' ? (
        <ChoosePassword given={given} onDone={goOn} />
      ) : (
        <TurnOnSecondStep staffId={staffId} onDone={goOn} />
      )}
      <StatusLine>{isLeft ? 'Neither is on yet. Turn one of them on first.' : null}</StatusLine>
      {problem === null ? null : <ProblemNotice problem={problemText(problem)} onRetry={() => void goOn()} />}
    </div>
  )
}
