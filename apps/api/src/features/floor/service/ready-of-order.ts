import type { Ready } from '@bayledger/contract/orders'
import { leftToDo } from '@bayledger/ledger/questions/left-to-do'
import type { OrderState } from '@bayledger/ledger/state'
import type { Deps } from '../../../deps.ts'
import { presentReady } from '../present.ts'
import { getReadyTimes, type Readiness } from './ready-times.ts'

/** The readiness of one order from its own entries; `null` where nothing can be said. */
export const getReadiness = async (deps: Deps, state: OrderState): Promise<Readiness | null> => {
  const { opened } = state
  if (!opened) return null
  const ready = await getReadyTimes(deps)
  return ready({
    orderId: state.orderId,
    locationId: state.locationId ?? opened.locationId,
    promisedAt: opened.promisedAt === null ? null : new Date(opened.promisedAt),
    left: leftToDo(state),
  })
}

/** The same as it is said to a person: rounded. */
export const getReady = async (deps: Deps, state: OrderState): Promise<Ready | null> => {
  const readiness = await getReadiness(deps, state)
  return readiness && presentReady(readiness.ready, deps.clock.now().toISOString())
}
