import { useQuery } from '@tanstack/react-query'
import { lazy, Suspense, useId, useState } from 'react'
import { Link } from 'react-router'
import { sessionQuery } from '../../../features/people/queries.ts'
import { customerPath, printPath, vehiclePath } from '../../../lib/paths.ts'
import { Button } from '../../../ui/button.tsx'
import { EditCustomer, EditVehicle } from './edit-dialogs.tsx'
import { EditStay } from './edit-stay.tsx'
import { EndOrder } from './end-order.tsx'
import type { OrderPart } from './order-part.ts'

const HoldDialog = lazy(async () => {
  const { HoldDialog: dialog } = await import('./hold-dialog.tsx')
  return { default: dialog }
})

/** What is seldom needed of an order: its edits, and canceling it. */
export function OrderMore({ order }: OrderPart) {
  const { vehicle, customer, state } = order
  const [editing, setEditing] = useState<'customer' | 'vehicle' | 'stay' | 'hold' | 'end' | null>(null)
  const [isOpen, setOpen] = useState(false)
  const menuId = useId()
  const roles = useQuery(sessionQuery).data?.staff.roles ?? []
  const isOwner = roles.includes('owner')
  const close = () => setEditing(null)
  const goesOn = state.reports.length === 0 && state.ended === null
  return (
    <>
      <Button aria-expanded={isOpen} aria-controls={menuId} onClick={() => setOpen(!isOpen)}>
        More
      </Button>
      <div id={menuId} className="order-more row" hidden={!isOpen}>
        <Link to={vehiclePath(vehicle.vehicleId)}>The vehicle’s page</Link>
        {/* A technician has no customers’ cards. */}
        {roles.every((role) => role === 'technician') ? null : (
          <Link to={customerPath(customer.customerId)}>The customer’s page</Link>
        )}
        <Button onClick={() => setEditing('customer')}>Edit the customer</Button>
        <Button onClick={() => setEditing('vehicle')}>Edit the vehicle</Button>
        {goesOn ? <Button onClick={() => setEditing('stay')}>Edit the stay</Button> : null}
        <Link to={printPath('work', order.orderId)}>Work sheet to print</Link>
        <Link to={printPath('tags', order.orderId)}>Wheel tags to print</Link>
        {state.payments.length === 0 ? null : (
          <Link to={printPath('receipt', order.orderId)}>Receipt to print</Link>
        )}
        {isOwner ? <Button onClick={() => setEditing('hold')}>Legal hold</Button> : null}
        {goesOn ? <Button onClick={() => setEditing('end')}>Cancel the order</Button> : null}
      </div>
      {editing === 'customer' ? (
        <EditCustomer orderId={order.orderId} customer={customer} onClose={close} />
      ) : null}
      {editing === 'vehicle' ? (
        <EditVehicle orderId={order.orderId} vehicle={vehicle} onClose={close} />
      ) : null}
      {editing === 'stay' ? <EditStay order={order} onClose={close} /> : null}
      {editing === 'hold' ? (
        <Suspense>
          <HoldDialog order={order} onClose={close} />
        </Suspense>
      ) : null}
      {editing === 'end' ? <EndOrder order={order} onClose={close} /> : null}
    </>
  )
}
