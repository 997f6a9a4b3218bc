import { Dialog } from '../../../ui/dialog.tsx'
import { LegalHolds } from '../records/legal-holds.tsx'
import type { OrderPart } from './order-part.ts'

/** For an owner: the legal holds on one order. */
export function HoldDialog({ order, onClose }: OrderPart & { onClose: () => void }) {
  const { orderId, number, customer } = order
  return (
    <Dialog title={`Legal hold on order ${number}`} onClose={onClose}>
      <LegalHolds
        held={{ subject: 'order', subjectId: orderId, customerId: customer.customerId }}
        mayLift={true}
      />
    </Dialog>
  )
}
