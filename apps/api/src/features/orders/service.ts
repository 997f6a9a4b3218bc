import type { Entry } from '@bayledger/ledger/entry'
import { nextMoves } from '@bayledger/ledger/questions/moves'
import { AppError } from '../../core/app-error.ts'
import type { Deps } from '../../deps.ts'
import { getCustomer } from '../customers/service.ts'
import { presentEntry } from '../entries/present.ts'
import { findPersonalDigests } from '../entries/service/find-personal-digests.ts'
import { loadHistory } from '../entries/service/load-facts.ts'
import { type Ledger, loadLedger } from '../entries/service/load-ledger.ts'
import { listTexts } from '../entries/store/personal-texts.ts'
import { getVehicle } from '../vehicles/service.ts'

/** The ledger of an order that exists. */
export const getLedger = async (deps: Deps, orderId: string): Promise<Ledger> => {
  const ledger = await loadLedger(deps, orderId)
  if (ledger.entries.length > 0) return ledger
  throw new AppError('ORDER_NOT_FOUND', 'Look for the order on the floor list, or search for its number.')
}

export const getOrder = async (deps: Deps, orderId: string) => {
  const { entries, state } = await getLedger(deps, orderId)
  const { opened } = state
  if (!opened) throw new Error(`order ${orderId} has entries and was never opened`)
  const [texts, customer, vehicle, history] = await Promise.all([
    textsOf(deps, entries),
    getCustomer(deps, opened.customerId),
    getVehicle(deps, opened.vehicleId),
    loadHistory(deps, state),
  ])
  return {
    orderId,
    number: opened.orderNumber ?? '',
    head: { seq: state.seq, hash: state.headHash },
    entries: entries.map(presentEntry),
    texts,
    customer,
    vehicle,
    history,
    moves: nextMoves(state, deps.clock.now().toISOString()),
  }
}

/** What an order gained after an entry; the texts are those of the whole order, for they are few. */
export const getEntriesAfter = async (deps: Deps, orderId: string, after: number) => {
  const { entries, state } = await getLedger(deps, orderId)
  const [texts, history] = await Promise.all([textsOf(deps, entries), loadHistory(deps, state)])
  return {
    head: { seq: state.seq, hash: state.headHash },
    entries: entries.filter(({ seq }) => seq > after).map(presentEntry),
    texts,
    history,
  }
}

/** The personal words that an order's entries name. */
export const textsOf = (deps: Deps, entries: readonly Entry[]) =>
  listTexts(deps.pool, deps.shopId, [...new Set(entries.flatMap(findPersonalDigests))])
