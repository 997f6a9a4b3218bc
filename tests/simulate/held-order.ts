import {
  type Gained,
  type OrderReply,
  type ReadOrder,
  readOrder,
  unsentOf,
} from '../../apps/web/src/ledger/order.ts'
import type { Parcel } from '../../apps/web/src/ledger/parcel.ts'
import { idOf } from '../../packages/ledger/test-support/seeded-ids.ts'

/** A whole order as a device holds it, from what it gained since its beginning. Whose vehicle it is matters to nobody here. */
export const heldWhole = (
  orderId: string,
  { history, head, entries, sides, withheld, heldAlone }: Gained,
): OrderReply => ({
  orderId,
  number: 'S-1',
  head,
  entries,
  sides,
  withheld,
  history,
  customer: { customerId: idOf('customer') } as OrderReply['customer'],
  vehicle: { vehicleId: idOf('vehicle') } as OrderReply['vehicle'],
  heldAlone,
  earlierOdometer: null,
  readOnly: null,
})

/** How a device shows orders: what it has heard of one, with its own unsent entries on top. It draws again what changed. */
export const newScreen = () => {
  const shown = new Map<string, { of: OrderReply; onTop: readonly Parcel[]; read: ReadOrder }>()
  return (reply: OrderReply, onTop: readonly Parcel[]): ReadOrder => {
    const own = onTop.filter(({ orderId }) => orderId === reply.orderId)
    const known = shown.get(reply.orderId)
    if (known?.of === reply && isSame(known.onTop, own)) return known.read
    const read = readOrder(reply, unsentOf(own, reply))
    shown.set(reply.orderId, { of: reply, onTop: own, read })
    return read
  }
}

const isSame = (one: readonly Parcel[], other: readonly Parcel[]): boolean =>
  one.length === other.length && one.every((parcel, index) => parcel === other[index])
