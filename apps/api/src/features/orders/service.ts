import { type SideKind, sideKinds } from '@bayledger/ledger/side-kinds'
import { holdsMoneyInline } from '@bayledger/ledger/sides'
import { doubtWords } from '@bayledger/wording/doubts'
import { english } from '@bayledger/wording/en/english'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { sidesFor } from '../../core/sides-for.ts'
import type { Deps } from '../../deps.ts'
import { getCustomerFor } from '../customers/service.ts'
import { loadHistory } from '../entries/service/load-facts.ts'
import { type Ledger, loadLedger } from '../entries/service/load-ledger.ts'
import { loadEarlierOdometer } from '../entries/service/load-odometer.ts'
import { presentEntry } from '../entries/service/present-entry.ts'
import { refuseDoubted } from '../entries/service/read-only-orders.ts'
import { sidesOf } from '../entries/service/read-sides.ts'
import { getVehicle, getVehicleFor } from '../vehicles/service.ts'
import { dropOtherOrders, holdOrder } from './store.ts'

/** The ledger of an order that exists. */
export const getLedger = async (deps: Deps, orderId: string): Promise<Ledger> => {
  const ledger = await loadLedger(deps, orderId)
  if (ledger.entries.length > 0) return ledger
  refuseDoubted(ledger)
  throw new AppError({ code: 'ORDER_NOT_FOUND' })
}

export const getOrder = async (deps: Deps, actor: StaffActor, orderId: string) => {
  const { entries, state, doubt } = await getLedgerFor(deps, actor, orderId)
  const { opened } = state
  if (!opened) throw new Error(`order ${orderId} has entries and was never opened`)
  const { vehicleId } = opened
  const [sides, customer, vehicle, history, earlierOdometer, heldAlone] = await Promise.all([
    sidesOf(deps, entries, sidesFor(actor)),
    getCustomerFor(deps, actor, opened.customerId),
    getVehicleFor(deps, actor, vehicleId),
    loadHistory(deps, state),
    loadEarlierOdometer(deps, { vehicleId, orderId }),
    holds(deps, actor, orderId),
  ])
  return {
    orderId,
    number: opened.orderNumber ?? '',
    head: { seq: state.seq, hash: state.headHash },
    entries: entries.map(presentEntry),
    sides,
    withheld: withheldFrom(actor),
    customer,
    vehicle,
    history,
    earlierOdometer,
    heldAlone,
    readOnly: doubt ? { ...doubt, words: doubtWords(english.doubts, doubt) } : null,
  }
}

/** What an order gained after an entry, with the sides that the new entries name. */
export const getEntriesAfter = async (deps: Deps, actor: StaffActor, orderId: string, after: number) => {
  const { entries, state } = await getLedgerFor(deps, actor, orderId)
  const newer = entries.slice(after)
  const [sides, history, heldAlone] = await Promise.all([
    sidesOf(deps, newer, sidesFor(actor)),
    loadHistory(deps, state),
    holds(deps, actor, orderId),
  ])
  return {
    head: { seq: state.seq, hash: state.headHash },
    entries: newer.map(presentEntry),
    sides,
    withheld: withheldFrom(actor),
    history,
    heldAlone,
  }
}

/** A tablet that reads an order holds it from then on; whether it is the only one. */
const holds = async (deps: Deps, { deviceId }: StaffActor, orderId: string): Promise<boolean> =>
  deviceId !== null && holdOrder(deps.pool, { shopId: deps.shopId, orderId, deviceId }, deps.clock.now())

/** Whoever asks goes on holding these orders and none else; at the desk nobody holds any. */
export const keepOrders = async (
  deps: Deps,
  { deviceId }: StaffActor,
  orderIds: readonly string[],
): Promise<void> => {
  if (deviceId !== null) await dropOtherOrders(deps.pool, { shopId: deps.shopId, deviceId, orderIds })
}

/** What a vehicle's odometer read last, before another order is opened for it. */
export const getLastOdometer = async (deps: Deps, vehicleId: string) => {
  const vehicle = await getVehicle(deps, vehicleId)
  return loadEarlierOdometer(deps, { vehicleId: vehicle.vehicleId, orderId: null })
}

/** First versions of some kinds hold prices inline; a payload is never cut, so such an order is not sent at all. */
export const getLedgerFor = async (deps: Deps, actor: StaffActor, orderId: string): Promise<Ledger> => {
  const ledger = await getLedger(deps, orderId)
  if (sidesFor(actor).has('money') || !ledger.entries.some(holdsMoneyInline)) return ledger
  throw new AppError({ code: 'ORDER_WITHHELD' })
}

const withheldFrom = (actor: StaffActor): SideKind[] => sideKinds.filter((side) => !sidesFor(actor).has(side))
