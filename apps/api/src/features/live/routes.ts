import { live } from '@bayledger/contract/live'
import type { Deps } from '../../deps.ts'
import { type Binding, bindStream } from '../../http/binding.ts'

export const liveRoutes = (deps: Deps): Binding[] => [bindStream(live, (reply) => deps.live.join(reply))]
