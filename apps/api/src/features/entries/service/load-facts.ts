import type { AdmitFacts } from '@bayledger/ledger/admit/facts'
import type { Draft } from '@bayledger/ledger/entry'
import { historyOf } from '@bayledger/ledger/questions/history-of'
import type { OrderState } from '@bayledger/ledger/state'
import type { HistoryEvidence } from '@bayledger/reckoning/evidence/evidence'
import { listedId } from '@bayledger/reckoning/sensor/sensor-id'
import type { Deps } from '../../../deps.ts'
import { listEarlierOrders } from '../store/list-earlier-orders.ts'
import { readFacts, type StoredFacts } from '../store/read-facts.ts'
import { loadLedger } from './load-ledger.ts'

/** What admitting these drafts needs to know of the world outside their order. */
export const loadFacts = async (
  deps: Deps,
  state: OrderState,
  drafts: readonly Draft[],
): Promise<(draft: Draft, at: string) => AdmitFacts> => {
  const opening = drafts.find((draft) => draft.kind === 'order.opened')
  const stored = await readFacts(deps.pool, deps.shopId, {
    restsOn: drafts.flatMap(({ restsOn }) => restsOn),
    vehicleId: state.opened?.vehicleId ?? null,
    locationId: state.locationId ?? opening?.payload.locationId ?? null,
    sensorIds: [...new Set([...sensorIdsRead(state), ...drafts.flatMap(sensorIdsIn)])],
  })
  // Only findings are computed from it: nothing else waits for the vehicle's earlier orders to be read.
  const history = drafts.some(({ kind }) => kind === 'diagnosis.issued')
    ? await historyFrom(deps, state, stored)
    : null
  return (draft, at) => factsFor(stored, history, draft, at)
}

const factsFor = (
  stored: StoredFacts,
  history: HistoryEvidence | null,
  draft: Draft,
  at: string,
): AdmitFacts => ({
  now: at,
  author: draft.writtenBy,
  staff: stored.staff,
  refusedIds: stored.refusedIds,
  wrenches: stored.wrenches,
  gauges: stored.gauges,
  history,
  secondPersonRequired: stored.secondPersonRequired,
  idsOnOtherVehicles: stored.idsOnOtherVehicles,
  heldBackParts: stored.heldBackParts,
})

/** What other orders of the shop know of this one's vehicle, as evidence. */
export const loadHistory = async (deps: Deps, state: OrderState): Promise<HistoryEvidence> =>
  historyFrom(
    deps,
    state,
    await readFacts(deps.pool, deps.shopId, {
      restsOn: [],
      vehicleId: state.opened?.vehicleId ?? null,
      locationId: state.locationId,
      sensorIds: sensorIdsRead(state),
    }),
  )

const historyFrom = async (
  deps: Deps,
  state: OrderState,
  { idsOnOtherVehicles }: StoredFacts,
): Promise<HistoryEvidence> => {
  const earlier = await listEarlierOrders(deps.pool, deps.shopId, state.orderId)
  const ledgers = await Promise.all(earlier.map((orderId) => loadLedger(deps, orderId)))
  return historyOf(
    state,
    ledgers.map((ledger) => ledger.state),
    sensorIdsRead(state).filter((id) => idsOnOtherVehicles.has(id)),
  )
}

const sensorIdsRead = (state: OrderState): string[] =>
  Object.values(state.arrival.wheels).flatMap((wheel) => {
    const reading = wheel.sensor?.reading
    return reading?.answer === 'answered' && reading.id !== null ? [listedId(reading.id)] : []
  })

const sensorIdsIn = (draft: Draft): string[] =>
  draft.kind === 'sensor.programmed' || draft.kind === 'sensor.fitted'
    ? [listedId(draft.payload.sensorId)]
    : []
