import { useRouteError } from 'react-router'
import { problemText } from '../../../lib/problem.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'

/** Shown in place of a screen that failed to render. Earlier entries are kept. */
export function BayFaultRoute() {
  return (
    <main className="bay-step">
      <title>Problem · Bayledger bay</title>
      <ProblemNotice problem={problemText(useRouteError())} onRetry={() => window.location.reload()} />
    </main>
  )
}
