import { listSecurityEvents } from '@bayledger/contract/security-events'
import { type Binding, bind } from '../../http/binding.ts'
import { presentSecurityEvent } from './present.ts'
import { listEvents } from './store.ts'

/** One page of the owner's shows so many. */
const most = 500

export const securityEventRoutes: readonly Binding[] = [
  bind(listSecurityEvents)(async ({ deps, query }) => {
    const rows = await listEvents(deps, { ...query, staffId: query.staffId ?? null, most: most + 1 })
    return {
      status: 200,
      body: { events: rows.slice(0, most).map(presentSecurityEvent), isWhole: rows.length <= most },
    }
  }),
]
