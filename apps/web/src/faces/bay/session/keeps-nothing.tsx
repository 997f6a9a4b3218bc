import { canMakeKeys } from '../../../ledger/key-store.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'

/** Says so where the browser makes no keys here: without them a tablet works only while the server answers. */
export function KeepsNothing() {
  if (canMakeKeys()) return null
  return (
    <ProblemNotice
      problem={{
        title: 'Open this page over HTTPS.',
        detail:
          'At this address the browser makes no keys. The tablet works while the server answers. Without it nobody can sign in here, and what the tablet keeps is not sealed. Tell the shop’s owner.',
      }}
    />
  )
}
