import { randomUUID } from 'node:crypto'
import type { Caller, TestApp } from './app.ts'
import { writeByHand } from './write-by-hand.ts'

/**
 * Writes a consent to look as the first version of its kind was written, with its fee inline, at the end of an order.
 * Gives the fee in cents.
 */
export const writeFirstVersionConsent = async (
  app: TestApp,
  desk: Caller,
  orderId: string,
): Promise<number> => {
  const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
  const lookFeeCents = 47_113
  await writeByHand(app, body.entries.at(-1), {
    id: randomUUID(),
    kind: 'authority.given',
    version: 1,
    payload: {
      to: ['look'],
      by: { relation: 'owner', name: 'a'.repeat(64) },
      channel: 'in-person',
      lookFeeCents,
      lookFeeWaivedWithWork: false,
    },
  })
  return lookFeeCents
}
