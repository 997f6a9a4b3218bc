import type { VehiclePage } from '@bayledger/contract/vehicle-page'
import { bundleTotals, moneySidesOf } from '@bayledger/ledger/questions/money'
import { stillOffered, type Visit, visitOf } from '@bayledger/ledger/questions/visit'
import { sensorCover } from '@bayledger/reckoning/money/warranty'
import { distanceIn } from '@bayledger/reckoning/units/length-units'
import { dayOf } from '@bayledger/report/compose/figures'
import type { StaffActor } from '../../core/actor.ts'
import { presentMove } from '../../core/present-move.ts'
import { listSameRecords } from '../../core/same-records.ts'
import { sidesFor } from '../../core/sides-for.ts'
import type { Deps } from '../../deps.ts'
import { getCustomerFor } from '../customers/service.ts'
import { loadLedger } from '../entries/service/load-ledger.ts'
import { movesAt } from '../entries/service/moves-at.ts'
import { sidesOf } from '../entries/service/read-sides.ts'
import { getSettings } from '../settings/service.ts'
import { getVehicle } from '../vehicles/service.ts'
import { presentLacks, presentOffer, presentVisit, pressuresOf } from './present.ts'
import { listVisits } from './store.ts'

/**
 * What the shop knows of a vehicle, from its own orders. It stays with the vehicle when the owner changes; who the earlier
 * owners were does not.
 */
export const getVehiclePage = async (
  deps: Deps,
  actor: StaffActor,
  vehicleId: string,
): Promise<VehiclePage> => {
  const vehicle = await getVehicle(deps, vehicleId)
  const [customer, rows, owner] = await Promise.all([
    getCustomerFor(deps, actor, vehicle.customerId),
    listVisits(deps.pool, deps.shopId, vehicleId),
    listSameRecords(deps.prisma, deps.shopId, 'customer', vehicle.customerId),
  ])
  const ledgers = await Promise.all(rows.map(({ orderId }) => loadLedger(deps, orderId)))
  const entries = ledgers.flatMap((ledger) => ledger.entries)
  const sides = moneySidesOf(
    sidesFor(actor).has('money') ? entries : [],
    await sidesOf(deps, entries, new Set([...sidesFor(actor)].filter((side) => side === 'money'))),
  )
  const visits = ledgers.map(({ state }) => visitOf(state)).filter((visit) => visit !== null)
  const rowOf = (orderId: string) => rows.find((row) => row.orderId === orderId)
  const numberOf = ({ orderId }: Visit) => rowOf(orderId)?.number ?? ''
  const now = deps.clock.now().toISOString()
  const open = rows.find(({ isOpen }) => isOpen)
  const seen = new Set<string>()
  const { shop, head } = await getSettings(deps)
  const timeZone = shop.locations.find(({ id }) => id === ledgers[0]?.state.locationId)?.timeZone ?? 'UTC'
  const lastMiles = visits.map(milesAt).find((miles) => miles !== null) ?? null
  const coverOf = (at: string, visit: Visit) =>
    sensorCover(
      head.warranty,
      { day: dayOf(at, timeZone), miles: milesAt(visit) },
      { day: dayOf(now, timeZone), miles: lastMiles },
    )
  return {
    asOf: now,
    vehicle,
    customer,
    openOrder: open
      ? {
          orderId: open.orderId,
          number: open.number,
          moves: movesAt(open.agenda, now).map(presentMove),
        }
      : null,
    visits: visits.flatMap((visit) => {
      const row = rowOf(visit.orderId)
      return row ? [presentVisit(visit, row, owner.includes(visit.customerId))] : []
    }),
    offers: stillOffered(visits.filter((visit) => rowOf(visit.orderId)?.isOpen === false)).map(
      ({ visit, offer }) =>
        presentOffer(offer, numberOf(visit), bundleTotals(sides, offer)?.totalCents ?? null),
    ),
    readings: visits
      .flatMap((visit) => visit.readings.map((reading) => ({ number: numberOf(visit), ...reading })))
      .toSorted((one, other) => one.at.localeCompare(other.at)),
    lacks: presentLacks(visits, numberOf),
    fitted: visits.flatMap((visit) =>
      visit.fitted.flatMap((fitted) => {
        if (seen.has(fitted.wheel)) return []
        seen.add(fitted.wheel)
        const since = visit.handedBackAt ?? fitted.at
        return [{ number: numberOf(visit), ...fitted, warranty: coverOf(since, visit) }]
      }),
    ),
    ...pressuresOf(ledgers.find(({ state }) => state.sheet)?.state.sheet?.sheet),
  }
}

/** What the odometer read when the vehicle came, in whole miles. */
const milesAt = ({ odometer }: Visit): number | null => odometer && Math.round(distanceIn('mi', odometer))
