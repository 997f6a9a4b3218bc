import type { Vehicle } from '@bayledger/contract/vehicles'
import { useQuery } from '@tanstack/react-query'
import { Link } from 'react-router'
import { day } from '../../../lib/format.ts'
import { deskOrderPath } from '../../../lib/paths.ts'
import { Button } from '../../../ui/button.tsx'
import { useShopClock } from '../shop-clock.ts'
import { vehiclePageQuery } from '../vehicle/vehicle-page-query.ts'
import type { WriteUp } from './write-up-form.ts'

type BeforeProps = {
  readonly vehicle: Vehicle
  /** Who brings it: what it was here for is said to its owner on file alone. */
  readonly customerId: string | null
  readonly comebackOf: WriteUp['comebackOf']
  readonly onComeback: (after: WriteUp['comebackOf']) => void
}

/** Of a vehicle on file: the order that is open already, and the last visit, after which it may have come back. */
export function VehicleBefore({ vehicle, customerId, comebackOf, onComeback }: BeforeProps) {
  const clock = useShopClock()
  const page = useQuery(vehiclePageQuery(vehicle.vehicleId)).data
  const open = page?.openOrder ?? null
  const last =
    vehicle.customerId === customerId
      ? page?.visits.find(({ isOpen, orderId }) => !isOpen && orderId !== null)
      : undefined
  const after = comebackOf ?? (last?.orderId ? { orderId: last.orderId, number: last.number } : null)
  return (
    <div className="stack vehicle-before">
      <div role="status">
        {open === null ? null : (
          <p>
            <strong>{open.number} is open for this vehicle.</strong> {open.moves[0]?.words}{' '}
            <Link to={deskOrderPath(open.orderId)}>Open {open.number}</Link>
          </p>
        )}
      </div>
      {after === null ? null : (
        <div className="row">
          {comebackOf !== null ? (
            <p>
              <strong>Comeback of {after.number}.</strong> Inspecting is free until the cause is known.
            </p>
          ) : last === undefined || page === undefined ? null : (
            <p>
              {[`Last here ${day(last.openedAt, page.asOf, clock)}`, last.number, last.cause, ...last.done]
                .filter((part) => part !== null)
                .join(' · ')}
            </p>
          )}
          <Button onClick={() => onComeback(comebackOf === null ? after : null)}>
            {comebackOf === null ? `It came back after ${after.number}` : 'It is another complaint'}
          </Button>
        </div>
      )}
    </div>
  )
}
