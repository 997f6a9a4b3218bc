import type { EntryOfKind } from '@bayledger/ledger/entry'
import { customers, vehicles } from '../../../../../../prisma/seeds/demo/customers.ts'
import type { OrderPen } from '../../../../../../prisma/seeds/demo/order-pen.ts'
import type { OrderReply } from '../../../ledger/order.ts'

/** An order of the demo as the server sends it to a desk. */
export const replyOf = (pen: OrderPen, number: string): OrderReply => {
  const { customerId, vehicleId } = (pen.entries()[0] as EntryOfKind<'order.opened'>).payload
  const { id, ...customer } = customers.find((one) => one.id === customerId) ?? nobody()
  const { id: _, ...vehicle } = vehicles.find((one) => one.id === vehicleId) ?? nobody()
  const last = pen.entries().at(-1) ?? nobody()
  return {
    ...{ orderId: pen.orderId, number, head: { seq: last.seq, hash: last.hash } },
    entries: pen.entries().map((entry) => ({ ...entry, restsOn: [...entry.restsOn] })),
    sides: pen
      .lines()
      .flatMap(({ sides }) => sides)
      .map(({ digest, text }) => ({
        side: pen.moneySides().has(digest) ? 'money' : 'personal',
        digest,
        text,
      })),
    customer: { customerId: id, version: 1, ...customer, language: 'en' },
    vehicle: { vehicleId, version: 1, ...vehicle, plateRegion: null, notes: null },
    ...{ withheld: [], history: null, earlierOdometer: null, heldAlone: false, readOnly: null },
  }
}

const nobody = (): never => {
  throw new Error('the demo has no such order')
}
