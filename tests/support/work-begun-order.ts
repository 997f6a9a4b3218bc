import type { Step } from '@bayledger/reckoning/step'
import { loadLedger } from '../../apps/api/src/features/entries/service/load-ledger.ts'
import type { Caller, TestApp } from './app.ts'
import type { BegunOrder } from './begun-order.ts'
import { closeNext } from './work-on.ts'

/** Closes the steps of a begun order one after the other over HTTP, with the demo's instruments, before the first that `until` names. */
export const workBegunOrder = async (
  shop: TestApp,
  { orderId, write }: BegunOrder,
  by: Caller,
  until: (step: Step) => boolean,
): Promise<void> => {
  for (;;) {
    const { state } = await loadLedger(shop.deps, orderId)
    const closing = closeNext(shop.demo, state, until)
    if (closing === null) return
    const written = await write(by, closing.kind, closing.payload)
    if (written.result !== 'accepted')
      throw new Error(`${closing.kind} is not accepted: ${JSON.stringify(written)}`)
  }
}
