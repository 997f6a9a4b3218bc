import { Link } from 'react-router'
import { patterns } from '../../../lib/paths.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'

export function NoSuchPageRoute() {
  return (
    <main className="bay-step stack">
      <title>No such page · Bayledger bay</title>
      <ProblemNotice problem={{ title: 'There is no such page.' }} />
      <Link to={patterns.bay}>Back to my vehicles</Link>
    </main>
  )
}
