import { matchPath, useLocation } from 'react-router'
import { patterns } from '../../../lib/paths.ts'
import { useOrderHere } from '../order/order-here.ts'
import { LoudBand } from '../vehicle/loud-band.tsx'

/**
 * The vehicle at which this tablet is locked, and its wheels that are not secured: whoever passes must see them, signed
 * in or not, sent or not.
 */
export function LockHead() {
  const { pathname } = useLocation()
  const orderId = matchPath(patterns.bayOrder, pathname)?.params.orderId ?? ''
  const order = useOrderHere(orderId, false).data
  if (order === undefined) return null
  return (
    <>
      <LoudBand state={order.state} />
      <p className="lock-vehicle">
        <span className="exact">{order.vehicle.plate ?? 'no plate'}</span> {order.number} ·{' '}
        {order.vehicle.description}
      </p>
    </>
  )
}
