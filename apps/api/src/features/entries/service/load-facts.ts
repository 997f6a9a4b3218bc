import type { AdmitFacts } from '@bayledger/ledger/admit/facts'
import type { Draft } from '@bayledger/ledger/entry'
import type { OrderState } from '@bayledger/ledger/order-state'
import type { HistoryEvidence } from '@bayledger/reckoning/evidence/evidence'
import { listedId } from '@bayledger/reckoning/sensor/sensor-id'
import type { Deps } from '../../../deps.ts'
import { readFacts, type StoredFacts } from '../store/read-facts.ts'

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
  return (draft, at) => factsFor(stored, state, draft, at)
}

const factsFor = (stored: StoredFacts, state: OrderState, draft: Draft, at: string): AdmitFacts => ({
  now: at,
  author: draft.writtenBy,
  roles: draft.writtenBy.kind === 'staff' ? (stored.staff.get(draft.writtenBy.staffId) ?? []) : [],
  staffIds: new Set(stored.staff.keys()),
  refusedIds: stored.refusedIds,
  wrenches: stored.wrenches,
  gauges: stored.gauges,
  history: historyOf(state, stored.idsOnOtherVehicles),
  secondPersonRequired: stored.secondPersonRequired,
  idsOnOtherVehicles: stored.idsOnOtherVehicles,
  heldBackParts: stored.heldBackParts,
})

/** What other orders of the shop know of this one's vehicle, as evidence; `null` where they know nothing. */
export const loadHistory = async (deps: Deps, state: OrderState): Promise<HistoryEvidence | null> => {
  const stored = await readFacts(deps.pool, deps.shopId, {
    restsOn: [],
    vehicleId: state.opened?.vehicleId ?? null,
    locationId: state.locationId,
    sensorIds: sensorIdsRead(state),
  })
  return historyOf(state, stored.idsOnOtherVehicles)
}

const historyOf = (state: OrderState, elsewhere: ReadonlySet<string>): HistoryEvidence | null => {
  const ids = sensorIdsRead(state)
    .filter((id) => elsewhere.has(id))
    .toSorted()
  return ids.length > 0 ? { idsOnOtherVehicles: ids } : null
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
