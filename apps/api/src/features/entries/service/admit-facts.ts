import type { AdmitFacts } from '@bayledger/ledger/admit/facts'
import type { Draft } from '@bayledger/ledger/entry'
import type { MoneySides } from '@bayledger/ledger/questions/money'
import type { EarlierOdometer } from '@bayledger/ledger/questions/odometer'
import type { OrderState } from '@bayledger/ledger/state'
import type { HistoryEvidence } from '@bayledger/reckoning/evidence/evidence'
import type { EntryFacts } from '../store/read-facts.ts'
import type { ShopFacts } from '../store/read-shop-facts.ts'

/** What one draft alone needs to know, beside the facts of the shop. */
export type OwnFacts = {
  readonly entry: EntryFacts
  readonly history: HistoryEvidence | null
  readonly earlierOdometer: EarlierOdometer | null
  readonly comebackIsOfVehicle: boolean | null
  readonly covers: AdmitFacts['covers']
  readonly vehicleIsOfCustomer: boolean | null
  /** The money sides that it names. */
  readonly money: MoneySides
  /** Only true of the order with this many entries; `null`: true of the order whatever is written to it. */
  readonly ofSeq: number | null
}

/** The facts that a draft is admitted on. `at`: the server's time, UTC text. */
export const factsFor = (
  shop: ShopFacts,
  { entry, history, earlierOdometer, comebackIsOfVehicle, covers, vehicleIsOfCustomer, money }: OwnFacts,
  state: OrderState,
  draft: Draft,
  at: string,
): AdmitFacts => {
  const locationId = draft.kind === 'order.opened' ? draft.payload.locationId : state.locationId
  const place = locationId === null ? undefined : shop.places.get(locationId)
  return {
    now: at,
    author: draft.writtenBy,
    staff: shop.staff,
    secondPersons: entry.secondPersons,
    refusedIds: entry.refusedIds,
    wrenches: withClicks(shop.wrenches, entry.cycles),
    gauges: shop.gauges,
    gaugesInQuarantine: shop.gaugesInQuarantine,
    history,
    earlierOdometer,
    comebackIsOfVehicle,
    covers,
    vehicleIsOfCustomer,
    secondPersonRequired: place?.secondPersonRequired ?? true,
    discountLimits: shop.discountLimits,
    idsOnOtherVehicles: entry.idsOnOtherVehicles,
    stock: place?.stock ?? new Map(),
    sheetsOnFile: entry.sheetsOnFile,
    money,
  }
}

const withClicks = (
  wrenches: ShopFacts['wrenches'],
  cycles: EntryFacts['cycles'],
): AdmitFacts['wrenches'] => {
  if (cycles.size === 0) return wrenches
  return new Map(
    [...wrenches].map(([id, wrench]) => [id, { ...wrench, cycles: cycles.get(id) ?? wrench.cycles }]),
  )
}
