import { agreementOf, secondPersonIn } from '@bayledger/ledger/agreement'
import type { Draft } from '@bayledger/ledger/entry'
import { coversOfScope } from '@bayledger/ledger/questions/comeback'
import { markOfEntry } from '@bayledger/ledger/questions/entry-places'
import { historyOf } from '@bayledger/ledger/questions/history-of'
import type { MoneySides } from '@bayledger/ledger/questions/money'
import type { OrderState } from '@bayledger/ledger/state'
import { agreementText } from '@bayledger/ledger/tablet-signing'
import { Id } from '@bayledger/ledger/text'
import { upcast } from '@bayledger/ledger/upcast'
import type { HistoryEvidence } from '@bayledger/reckoning/evidence/evidence'
import { listedId } from '@bayledger/reckoning/sensor/sensor-id'
import * as z from 'zod/mini'
import { isSignedBy } from '../../../core/tablet-signature.ts'
import { tokenDigest } from '../../../core/tokens.ts'
import type { Deps } from '../../../deps.ts'
import { isOfCustomer } from '../store/is-of-customer.ts'
import { isVisitOf } from '../store/is-visit-of.ts'
import { listEarlierOrders } from '../store/list-earlier-orders.ts'
import { type EntryFacts, readEntryFacts } from '../store/read-facts.ts'
import type { OwnFacts } from './admit-facts.ts'
import { loadComeback } from './load-comeback.ts'
import { loadLedger } from './load-ledger.ts'
import { loadEarlierOdometer, odometerReadOf } from './load-odometer.ts'

/** Reads what this draft needs and no other kind would: nothing at all for most. */
export const loadOwnFacts = async (
  deps: Pick<Deps, 'pool' | 'shopId'>,
  state: OrderState,
  draft: Draft,
  money: MoneySides,
): Promise<OwnFacts> => {
  const read = await readEntryFacts(deps.pool, deps.shopId, {
    restsOn: draft.restsOn.filter((id) => !markOfEntry(state, id)),
    vehicleId: state.opened?.vehicleId ?? null,
    apartFromOrder: null,
    sensorIds: sensorIdsIn(draft),
    wrenchIds: wrenchIdsIn(draft),
    secondPersonTokens: secondPersonTokensIn(draft),
    vouchingTablet: vouchedIn(draft)?.deviceId ?? null,
    sheet: sheetIn(draft),
  })
  const entry = withVouched(read, draft)
  const odometer = odometerReadOf(state, draft)
  const earlierOdometer = odometer && (await loadEarlierOdometer(deps, odometer))
  const comebackIsOfVehicle = await isComebackOfVehicle(deps, draft)
  const covers = await loadCovers(deps, state, draft, money)
  const vehicleIsOfCustomer = await isVehicleOfCustomer(deps, draft)
  const own = { entry, money, earlierOdometer, comebackIsOfVehicle, covers, vehicleIsOfCustomer }
  return draft.kind === 'diagnosis.issued'
    ? { ...own, history: await loadHistory(deps, state), ofSeq: state.seq }
    : { ...own, history: null, ofSeq: covers === null ? null : state.seq }
}

/** What the terms say of the lines of an estimate on a comeback, as its cause is now. */
const loadCovers = async (
  deps: Pick<Deps, 'pool' | 'shopId'>,
  state: OrderState,
  draft: Draft,
  money: MoneySides,
): Promise<OwnFacts['covers']> => {
  const current = upcast(draft)
  if (current.kind !== 'estimate.issued' || state.comeback === null) return null
  const facts = await loadComeback(deps, state)
  return facts && coversOfScope(current.payload.scope, money, { ...facts, cause: state.comeback.cause })
}

const isComebackOfVehicle = async (
  { pool, shopId }: Pick<Deps, 'pool' | 'shopId'>,
  draft: Draft,
): Promise<boolean | null> => {
  if (draft.kind !== 'order.opened' || draft.payload.comebackOf === null) return null
  return isVisitOf(pool, shopId, draft.payload.comebackOf, draft.payload.vehicleId)
}

const isVehicleOfCustomer = async (
  { pool, shopId }: Pick<Deps, 'pool' | 'shopId'>,
  draft: Draft,
): Promise<boolean | null> =>
  draft.kind === 'order.opened' ? isOfCustomer(pool, shopId, draft.payload) : null

/** What other orders of the shop know of this one's vehicle, as evidence. */
export const loadHistory = async (
  deps: Pick<Deps, 'pool' | 'shopId'>,
  state: OrderState,
): Promise<HistoryEvidence> => {
  const [{ idsOnOtherVehicles }, earlier] = await Promise.all([
    readEntryFacts(deps.pool, deps.shopId, {
      restsOn: [],
      vehicleId: state.opened?.vehicleId ?? null,
      // Its own arrival check has just heard them on this vehicle.
      apartFromOrder: state.orderId,
      sensorIds: sensorIdsRead(state),
      wrenchIds: [],
      secondPersonTokens: [],
      vouchingTablet: null,
      sheet: null,
    }),
    listEarlierOrders(deps.pool, deps.shopId, state.orderId),
  ])
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

const wrenchIdsIn = (draft: Draft): string[] =>
  draft.kind === 'studs.torqued' || draft.kind === 'torque.checked' ? [draft.payload.wrench.instrumentId] : []

const secondPersonTokensIn = (draft: Draft): string[] => {
  const proof = secondPersonIn(upcast(draft))?.proof
  return proof?.how === 'pin' ? [tokenDigest(proof.token)] : []
}

/** The second person for whose PIN a tablet vouches, with what they agree to; `null`: no tablet does. */
const vouchedIn = (draft: Draft) => {
  const current = upcast(draft)
  const person = secondPersonIn(current)
  const agreement = agreementOf(current)
  return person?.proof?.how === 'tablet' && agreement
    ? { staffId: person.staffId, agreement, ...person.proof }
    : null
}

/** The facts, with a second person whose tablet's signature holds. */
const withVouched = (facts: EntryFacts, draft: Draft): EntryFacts => {
  const vouched = vouchedIn(draft)
  if (vouched === null || facts.tabletKey === null) return facts
  const { staffId, agreement, signature } = vouched
  if (!isSignedBy(facts.tabletKey, agreementText(agreement, vouched), signature)) return facts
  return { ...facts, secondPersons: new Map([[draft.id, { ...agreement, staffId, until: null }]]) }
}

/** The version of a sheet that an order is to use; `null` also where its id could be nobody's. */
const sheetIn = (draft: Draft): { readonly sheetId: string; readonly version: number } | null => {
  if (draft.kind !== 'sheet.chosen') return null
  const { sheetId, version } = draft.payload.sheet
  return z.safeParse(Id, sheetId).success && version <= largestVersion ? { sheetId, version } : null
}

/** What a version's column can hold. */
const largestVersion = 2_147_483_647
