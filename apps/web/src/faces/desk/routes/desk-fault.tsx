import { Link, useRouteError } from 'react-router'
import { patterns } from '../../../lib/paths.ts'
import { problemText } from '../../../lib/problem.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'

/** Shown in place of a sheet that failed to render. */
export function DeskFaultRoute() {
  return (
    <div className="stack desk-fault">
      <title>Problem · Bayledger desk</title>
      <ProblemNotice problem={problemText(useRouteError())} onRetry={() => window.location.reload()} />
      <p>
        <Link to={patterns.desk}>Back to the floor list</Link>
      </p>
    </div>
  )
}
