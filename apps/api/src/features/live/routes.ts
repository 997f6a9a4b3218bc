import { live } from '@bayledger/contract/live'
import type { Parts } from '../../deps.ts'
import { type Binding, bindStream } from '../../http/binding.ts'

export const liveRoutes = (parts: Parts): Binding[] => [
  bindStream(live, (reply, { shopId, sessionId }) => parts.live.join(reply, { shopId, sessionId })),
]
