import type { Awaited } from '@bayledger/contract/endpoint'
import { getSession } from '@bayledger/contract/sessions'
import { useState } from 'react'
import { call } from '../../../lib/api-client.ts'
import { problemText } from '../../../lib/problem.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { ChoosePassword } from './choose-password.tsx'

type FinishSignInProps = {
  awaits: Awaited
  /** The password with which they signed in. */
  given: string
  onDone: () => unknown
}

/** What has to be done after a sign-in before the desk opens, one thing after the other. */
export function FinishSignIn({ awaits: first, given, onDone }: FinishSignInProps) {
  const [awaits, setAwaits] = useState(first)
  const [problem, setProblem] = useState<unknown>(null)
  const goOn = async () => {
    setProblem(null)
    try {
      const next = (await call(getSession, {})).awaits
      if (next === undefined) onDone()
      else setAwaits(next)
    } catch (thrown) {
      setProblem(thrown)
    }
  }
  return (
    <div className="stack">
      {awaits === 'password' ? <ChoosePassword given={given} onDone={goOn} /> : null}
      {problem === null ? null : <ProblemNotice problem={problemText(problem)} onRetry={() => void goOn()} />}
    </div>
  )
}
