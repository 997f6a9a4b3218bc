import type { Entry } from '@bayledger/ledger/entry'
import { oneSensorJob, workUntil } from '../../packages/ledger/test-support/one-sensor-job.ts'
import type { OrderPen } from '../../packages/ledger/test-support/order-pen.ts'

/** A job as far as the shop brought it before the day began: the next step is the first one of this kind. */
const upTo = (name: string, closedBy: string): readonly Entry[] => {
  const pen: OrderPen = oneSensorJob('decided', name)
  const steps = pen.state().plan?.plan.steps ?? []
  const next = steps.find((step) => step.closedBy === closedBy)?.stepKey
  workUntil(pen, (stepKey) => stepKey === next)
  return pen.entries()
}

/**
 * The orders with which a day begins, oldest first. A day is too short to bring a new one onto the road: of these one has
 * its wheel off, and one is about to leave for its proof drive.
 */
export const begunOrders: readonly (readonly Entry[])[] = [
  upTo('wheel-off', 'wheel.mounted'),
  upTo('about-to-leave', 'drive.done'),
]
