import type { OrderState } from '@bayledger/ledger/state'
import { workedOrder } from './worked-order.ts'

/** What the worked order's entries fold to. The spare lay under cargo and was left as it was. */
export const workedState: OrderState = workedOrder('worked', { setAside: ['SP.pressure.set'] }).state()
