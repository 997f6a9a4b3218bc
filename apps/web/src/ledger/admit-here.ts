import type { StaffMember } from '@bayledger/contract/identity'
import type { Instrument, Location, StockPart } from '@bayledger/contract/settings'
import { admit } from '@bayledger/ledger/admit'
import type { AdmitFacts, PartOnStock } from '@bayledger/ledger/admit/facts'
import type { Refusal } from '@bayledger/ledger/admit/refusal'
import { agreementOf, secondPersonIn } from '@bayledger/ledger/agreement'
import type { Draft } from '@bayledger/ledger/entry'
import type { OrderState } from '@bayledger/ledger/state'
import { foldOnTop, type OrderReply, oneMore, unsentOf } from './order.ts'
import type { Parcel } from './parcel.ts'

/** What a tablet knows beside the order, as it last read it. */
export type KnownHere = {
  /** UTC text. */
  readonly now: string
  readonly staff: readonly StaffMember[]
  readonly instruments: readonly Instrument[]
  readonly stock: readonly StockPart[]
  readonly locations: readonly Location[]
}

/**
 * Why the ledger would refuse a parcel, by its own rules and what this tablet knows; `null`: nothing that is known here
 * speaks against it. What only the server knows (sensors of other vehicles, sheets on file) is left to the server.
 */
export const refusedHere = (
  order: OrderReply,
  onTop: readonly Parcel[],
  parcel: Parcel,
  known: KnownHere,
): Refusal | null => {
  let folded = foldOnTop(order, unsentOf(onTop, order).drafts)
  for (const draft of unsentOf([parcel], order).drafts) {
    const { state } = folded
    const verdict = admit(state, draft, factsHere(order, state, draft, known))
    if (!verdict.admitted) return verdict
    folded = oneMore(folded, draft)
  }
  return null
}

const factsHere = (order: OrderReply, state: OrderState, draft: Draft, known: KnownHere): AdmitFacts => {
  const place = known.locations.find(({ locationId }) => locationId === state.locationId)
  return {
    now: known.now,
    author: draft.writtenBy,
    staff: new Map(known.staff.map(({ staffId, roles }) => [staffId, roles])),
    secondPersons: proven(draft, known.now),
    refusedIds: new Set(),
    wrenches: new Map(
      known.instruments.flatMap((one) => (one.kind === 'wrench' ? [[one.instrumentId, one] as const] : [])),
    ),
    gauges: new Set(
      known.instruments.flatMap((one) =>
        one.kind === 'gauge' && !one.quarantined ? [one.instrumentId] : [],
      ),
    ),
    gaugesInQuarantine: new Set(),
    history: order.history,
    earlierOdometer: order.earlierOdometer,
    // Orders are opened at the desk, and the server looks.
    comebackIsOfVehicle: null,
    covers: null,
    vehicleIsOfCustomer: null,
    secondPersonRequired: place?.lawProfile.secondPersonForTorque !== false,
    // Prices are the desk's: no tablet issues an estimate.
    discountLimits: { advisor: 0, lead: 0, manager: 0, owner: 0 },
    idsOnOtherVehicles: new Set(),
    stock: new Map(
      known.stock
        .filter(({ locationId }) => locationId === state.locationId)
        .map((part) => [part.partNumber, asListed(part)]),
    ),
    sheetsOnFile: new Set(),
    money: new Map(),
  }
}

/** The PIN of a second person is checked before: whether its proof is good is for the server to say. */
const proven = (draft: Draft, now: string): AdmitFacts['secondPersons'] => {
  const agreement = agreementOf(draft)
  const staffId = secondPersonIn(draft)?.staffId
  return new Map(
    agreement && staffId !== undefined ? [[draft.id, { ...agreement, staffId, until: now }]] : [],
  )
}

/** A list that a tablet kept from before says nothing of protocols. */
const asListed = ({ frequenciesMHz, protocols = [], ...part }: StockPart): PartOnStock => ({
  ...part,
  frequenciesMHz: frequenciesMHz.length === 0 ? null : frequenciesMHz,
  protocols: protocols.length === 0 ? null : protocols,
})
