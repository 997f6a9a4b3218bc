import { type Customer, getCustomer } from '@bayledger/contract/customers'
import { type SearchHit, search } from '@bayledger/contract/search'
import { getVehicle, type Vehicle } from '@bayledger/contract/vehicles'
import { useMutation, useQuery } from '@tanstack/react-query'
import { call } from '../../lib/api-client.ts'
import { problemText } from '../../lib/problem.ts'
import { Button } from '../../ui/button.tsx'
import { ProblemNotice } from '../../ui/problem-notice.tsx'
import { mark, sameMark } from './same-mark.ts'

type AlikeProps = {
  readonly plate: string
  readonly vin: string
  /** The vehicle that is being edited. */
  readonly except?: string
  /** Absent: they are only shown. */
  readonly onUse?: (vehicle: Vehicle, owner: Customer) => void
}

/** Vehicles on file with this plate or VIN, before another one is made. */
export function AlikeVehicles({ plate, vin, except, onUse }: AlikeProps) {
  const byPlate = useAlike(plate, 3, 'plate')
  const byVin = useAlike(vin, 17, 'vin')
  const use = useMutation({
    mutationFn: async ({ vehicleId, customerId }: { vehicleId: string; customerId: string }) => ({
      vehicle: await call(getVehicle, { params: { vehicleId } }),
      owner: await call(getCustomer, { params: { customerId } }),
    }),
    onSuccess: ({ vehicle, owner }) => onUse?.(vehicle, owner),
  })
  const alike = [...byVin, ...byPlate.filter(({ plate: found }) => sameMark(found, plate))].filter(
    ({ vehicleId }, at, all) =>
      vehicleId !== except && all.findIndex((other) => other.vehicleId === vehicleId) === at,
  )
  return (
    <div role="status">
      {alike.map(({ vehicleId, customerId, customerName, vehicleDescription, plate: found, matched }) => {
        const words = `${found ?? 'No plate'} · ${vehicleDescription ?? ''} · ${customerName}`
        return (
          <div key={vehicleId} className="row">
            <p>
              <strong>This {matched === 'vin' ? 'VIN' : 'plate'} is on file:</strong> {words}
            </p>
            {onUse === undefined || vehicleId === null ? null : (
              <Button
                busy={use.isPending}
                onClick={() => use.mutate({ vehicleId, customerId })}
                aria-label={`Use this vehicle: ${words}`}
              >
                Use this vehicle
              </Button>
            )}
          </div>
        )
      })}
      {use.isError ? <ProblemNotice problem={problemText(use.error)} /> : null}
    </div>
  )
}

const useAlike = (typed: string, shortest: number, matched: SearchHit['matched']): readonly SearchHit[] => {
  const wanted = mark(typed)
  const found = useQuery({
    queryKey: ['alike', wanted],
    queryFn: ({ signal }) => call(search, { query: { q: wanted }, signal }),
    enabled: wanted.length >= shortest && wanted.length <= 17,
  })
  return (found.data?.hits ?? []).filter((hit) => hit.matched === matched)
}
