import type { Draft } from '@bayledger/ledger/entry'
import { type EarlierOdometer, lastOdometer } from '@bayledger/ledger/questions/odometer'
import type { OrderState } from '@bayledger/ledger/state'
import type { Deps } from '../../../deps.ts'
import { listEarlierVisits } from '../store/list-earlier-visits.ts'
import { loadLedger } from './load-ledger.ts'

type Of = { readonly vehicleId: string; readonly orderId: string | null }

/** What a vehicle's odometer read last at a visit before this order; before now, where `orderId` is `null`. */
export const loadEarlierOdometer = async (
  deps: Pick<Deps, 'pool' | 'shopId'>,
  of: Of,
): Promise<EarlierOdometer | null> => {
  for (const orderId of await listEarlierVisits(deps.pool, deps.shopId, of)) {
    const last = lastOdometer((await loadLedger(deps, orderId)).state)
    if (last) return { distance: last.distance, readAt: last.written.receivedAt ?? last.written.writtenAt }
  }
  return null
}

/** The vehicle whose odometer a draft gives a reading of that is compared with earlier visits; `null` for others. */
export const odometerReadOf = (state: OrderState, { kind, orderId, payload }: Draft): Of | null => {
  switch (kind) {
    case 'order.opened':
      return payload.odometer ? { vehicleId: payload.vehicleId, orderId } : null
    case 'odometer.read':
    case 'order.handed_back':
      return state.opened ? { vehicleId: state.opened.vehicleId, orderId } : null
    default:
      return null
  }
}
