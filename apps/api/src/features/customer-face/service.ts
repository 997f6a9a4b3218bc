import type { decideEstimate as decideEndpoint } from '@bayledger/contract/customer-face'
import type { BodyOf } from '@bayledger/contract/endpoint'
import type { CustomerLanguageCode } from '@bayledger/ledger/customer-language-code'
import { canonicalText, sha256Hex } from '@bayledger/ledger/digests'
import type { DraftOfKind, Entry } from '@bayledger/ledger/entry'
import { type MoneySides, moneySidesOf } from '@bayledger/ledger/questions/money'
import { versionOf } from '@bayledger/ledger/registry'
import { isSameName } from '@bayledger/ledger/same-name'
import { dayOf } from '@bayledger/report/compose/figures'
import { customerLanguages } from '@bayledger/wording/customer-languages'
import type { CustomerActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import type { Deps } from '../../deps.ts'
import { chooseLanguage, getCustomer } from '../customers/service.ts'
import { appendDraft } from '../entries/service/append-draft.ts'
import type { Ledger } from '../entries/service/load-ledger.ts'
import { sidesOf } from '../entries/service/read-sides.ts'
import { sealSide } from '../entries/service/seal-side.ts'
import { getReady } from '../floor/service/ready-of-order.ts'
import { getLedger } from '../orders/service.ts'
import { getSharedPhoto, listReceived } from '../photos/service.ts'
import { getNewestReportBytes } from '../reports/service.ts'
import { getSettings } from '../settings/service.ts'
import { getVehicle } from '../vehicles/service.ts'
import { presentCustomerOrder, shownToCustomer } from './present.ts'

export type Decision = BodyOf<typeof decideEndpoint>

export const getCustomerOrder = async (deps: Deps, actor: CustomerActor) => {
  const ledger = await getLedger(deps, actor.orderId)
  const { state } = ledger
  const { opened } = state
  if (!opened) throw new Error(`order ${actor.orderId} was never opened`)
  const [money, { shop, head }, customer, vehicle, ready, photosReceived] = await Promise.all([
    moneyOf(deps, ledger),
    getSettings(deps),
    getCustomer(deps, opened.customerId),
    getVehicle(deps, opened.vehicleId),
    getReady(deps, state),
    listReceived(
      deps,
      state.photos.filter(({ shared }) => shared).map(({ digest }) => digest),
    ),
  ])
  const timeZone = shop.locations.find(({ id }) => id === state.locationId)?.timeZone ?? 'UTC'
  return presentCustomerOrder(state, money, {
    language: customerLanguages[customer.language],
    shopName: shop.name,
    shopPhone: head.telephone,
    timeZone,
    ready,
    now: deps.clock.now().toISOString(),
    today: dayOf(deps.clock.now().toISOString(), timeZone),
    customerName: customer.name,
    vehicleDescription: vehicle.description,
    color: vehicle.color,
    photosReceived,
  })
}

/** The money of the customer's own order. */
const moneyOf = async (deps: Deps, { entries }: Ledger): Promise<MoneySides> =>
  moneySidesOf(entries, await sidesOf(deps, entries, new Set(['money'])))

const customerOf = ({ state }: Ledger): string => {
  if (!state.opened) throw new Error(`order ${state.orderId} was never opened`)
  return state.opened.customerId
}

const languageOf = async (deps: Deps, ledger: Ledger): Promise<CustomerLanguageCode> =>
  (await getCustomer(deps, customerOf(ledger))).language

/** Keeps the language that was chosen on the page on the customer's card: page, messages and report follow it. */
export const putLanguage = async (
  deps: Deps,
  actor: CustomerActor,
  language: CustomerLanguageCode,
): Promise<void> => chooseLanguage(deps, customerOf(await getLedger(deps, actor.orderId)), language)

/** Enters the customer's answers. Sent again with the same id it answers as before; the ledger decides what it takes. */
export const decideEstimate = async (deps: Deps, actor: CustomerActor, decision: Decision) => {
  const ledger = await getLedger(deps, actor.orderId)
  const earlier = ledger.entries.find(({ id }) => id === decision.entryId)
  if (earlier) return { entry: repeated(earlier, decision), orderId: actor.orderId }
  const language = await languageOf(deps, ledger)
  const shownNow = shownToCustomer(ledger.state, await moneyOf(deps, ledger), customerLanguages[language])
  const isNewest = shownNow?.estimate.revision === decision.revision
  if (!shownNow || (isNewest && sha256Hex(shownNow.text) !== decision.shown))
    throw new AppError({ code: 'ENTRY_REFUSED', why: 'estimate-changed' }, { reason: 'SHOWN_MISSING' })
  if (decision.signature.form === 'typed' && !isSameName(decision.signature.text, decision.name))
    throw new AppError({ code: 'ENTRY_REFUSED', why: 'another-name' }, { reason: 'SIGNATURE_OF_ANOTHER' })
  const shown = sealSide('shown', shownNow.text)
  const name = sealSide('personal', decision.name)
  const signature = sealSide('personal', decision.signature.text)
  const draft: DraftOfKind<'estimate.decided'> = {
    id: decision.entryId,
    shopId: deps.shopId,
    orderId: actor.orderId,
    kind: 'estimate.decided',
    version: versionOf('estimate.decided'),
    payload: {
      revision: decision.revision,
      digest: decision.digest,
      answers: decision.answers,
      by: { relation: decision.relation, name: name.digest },
      consent: {
        channel: 'link',
        linkId: actor.linkId,
        signature: { form: decision.signature.form, digest: signature.digest },
      },
      shown: shown.digest,
      language,
      agreesToElectronicRecord: decision.agreesToElectronicRecord,
      wantsRemovedParts: decision.wantsRemovedParts,
    },
    restsOn: [],
    writtenBy: { kind: 'customer', linkId: actor.linkId },
    deviceId: null,
    writtenAt: deps.clock.now().toISOString(),
  }
  const appended = await appendDraft(deps, draft, { sides: [name, signature, shown] })
  if (!appended.admitted)
    throw new AppError({ code: 'ENTRY_REFUSED', why: 'ledger', refusal: appended }, { reason: appended.code })
  return { entry: appended.entry, orderId: actor.orderId }
}

/** The same answers under the same id are the same decision; anything else under it is not. */
const repeated = (entry: Entry, decision: Decision): Entry => {
  if (
    entry.kind === 'estimate.decided' &&
    entry.payload.revision === decision.revision &&
    canonicalText(entry.payload.answers) === canonicalText(decision.answers)
  )
    return entry
  throw new AppError({ code: 'ENTRY_REFUSED', why: 'answered-before' }, { reason: 'ENTRY_ID_REUSED' })
}

export const getCustomerReport = async (deps: Deps, actor: CustomerActor) =>
  getNewestReportBytes(deps, actor.orderId)

export const getCustomerPhoto = async (deps: Deps, actor: CustomerActor, digest: string) =>
  getSharedPhoto(deps, actor.orderId, digest)
