import type { Customer } from '@bayledger/contract/customers'
import type { WithheldReason } from '@bayledger/contract/messages'
import { filledIn, type OwnMessages } from '@bayledger/ledger/message-template'
import { answerTo, newestBundles } from '@bayledger/ledger/questions/answers'
import { namedBundle } from '@bayledger/ledger/questions/named'
import { nextSteps } from '@bayledger/ledger/questions/next-steps'
import type { OrderState } from '@bayledger/ledger/state'
import { dayOf } from '@bayledger/report/compose/figures'
import { bundleTitle } from '@bayledger/wording/bundles'
import { customerLanguages } from '@bayledger/wording/customer-languages'
import type { CustomerLanguage } from '@bayledger/wording/language'
import { letterText, type MessageFacts, templateValues } from '@bayledger/wording/messages'
import { nextStepWords } from '@bayledger/wording/next-steps'
import { whenWords } from '@bayledger/wording/ready'
import type { Letter, TextMessage } from '../../../carriers/carrier.ts'
import type { Deps } from '../../../deps.ts'
import { getCustomer } from '../../customers/service.ts'
import { linkAddress, openLinkOfMessage } from '../../links/service.ts'
import { getLedger } from '../../orders/service.ts'
import { getNewestReportBytes } from '../../reports/service.ts'
import { getSettings } from '../../settings/service.ts'
import { getVehicle } from '../../vehicles/service.ts'
import { choiceOf, hasAgreed, mostAttachedBytes } from '../policy.ts'
import { presentChoice } from '../present.ts'
import type { ClaimedMessage } from '../store/claim-message.ts'
import * as store from '../store.ts'
import { quietUntil } from './quiet-hours.ts'

export type Composed =
  | { readonly what: 'letter'; readonly letter: Letter }
  | { readonly what: 'text'; readonly message: TextMessage }
  | { readonly what: 'withheld'; readonly reason: WithheldReason }
  | { readonly what: 'withdrawn' }
  | { readonly what: 'postponed'; readonly at: Date; readonly dueAgain: boolean }

const day = 24 * 60 * 60_000

/** The address at which a customer ends messages. */
export const stopAddress = (deps: Deps, token: string): string =>
  `${deps.publicAddress}/api/unsubscribe/${token}`

/**
 * Makes the words of a message at the moment when it goes: in the language of the customer's card, to the address on it, and
 * only if the customer still agrees and there still is something to say.
 */
export const composeMessage = async (deps: Deps, message: ClaimedMessage): Promise<Composed> => {
  const { state } = await getLedger(deps, message.orderId)
  const { opened } = state
  if (!opened) throw new Error(`order ${message.orderId} was never opened`)
  const [customer, vehicle, { shop, head }, choices] = await Promise.all([
    getCustomer(deps, opened.customerId),
    getVehicle(deps, opened.vehicleId),
    getSettings(deps),
    store.listChoices(deps, opened.customerId),
  ])
  const to = message.channel === 'email' ? customer.email : customer.phone
  if (!hasAgreed(customer, choices.map(presentChoice), choiceOf(message.purpose), message.channel))
    return { what: 'withheld', reason: 'not-agreed' }
  if (!to) return { what: 'withheld', reason: 'no-address' }
  const language = customerLanguages[customer.language]
  const now = deps.clock.now()
  const timeZone = shop.locations.find(({ id }) => id === state.locationId)?.timeZone ?? 'UTC'
  const said = await whatToSay(deps, state, message, language, timeZone)
  if (!Array.isArray(said)) return said
  const quiet = message.inQuietHours ? null : quietUntil(now, timeZone, head.quietHours)
  if (quiet) return { what: 'postponed', at: quiet, dueAgain: false }
  const link = await linkOf(deps, message)
  if (link === 'withdrawn') return { what: 'withdrawn' }
  const facts: MessageFacts = {
    name: customer.name,
    vehicle: vehicle.description,
    shop: shop.name,
    telephone: head.telephone,
    link,
    lines: said,
  }
  return message.channel === 'text'
    ? {
        what: 'text',
        message: {
          id: message.id,
          createdAt: message.createdAt,
          to,
          text: textOf(message, facts, head, language),
        },
      }
    : { what: 'letter', letter: await letterOf(deps, message, facts, head, customer, to) }
}

/** What a reminder says beside its usual words; what the desk sent says nothing more. */
const whatToSay = async (
  deps: Deps,
  state: OrderState,
  { purpose, orderId, createdAt }: ClaimedMessage,
  language: CustomerLanguage,
  timeZone: string,
): Promise<string[] | Exclude<Composed, { what: 'letter' | 'text' }>> => {
  const withheld = (reason: WithheldReason) => ({ what: 'withheld', reason }) as const
  const isOver = state.handedBack !== null || state.ended !== null
  if (purpose === 'estimate') return isOver ? withheld('order-ended') : []
  if (purpose === 'report') return state.reports.length === 0 ? withheld('nothing-to-say') : []
  const now = deps.clock.now().toISOString()
  const { vehicleId, promisedAt } = state.opened ?? {}
  const hasNewer = async () =>
    (await store.listMessages(deps, orderId)).some(
      (other) => other.purpose === purpose && other.createdAt > createdAt,
    )
  if (purpose === 'new-time') {
    if (isOver || state.reports.length > 0) return withheld('order-ended')
    if (await hasNewer()) return withheld('newer-message')
    return promisedAt
      ? [whenWords(promisedAt, { locale: language.locale, timeZone, now })]
      : withheld('nothing-to-say')
  }
  if (vehicleId && (await store.cameBackSince(deps, vehicleId, createdAt))) return withheld('came-back')
  if (purpose === 'retorque') {
    const step = nextSteps(state, dayOf(now, timeZone)).find(({ code }) => code === 'retorque')
    return step
      ? [nextStepWords(language.nextSteps, step, { telephone: null, person: null })]
      : withheld('nothing-to-say')
  }
  if (await hasNewer()) return withheld('newer-message')
  const later = newestBundles(state).filter((bundle) => answerTo(state, bundle)?.answer === 'deferred')
  if (later.length === 0) return withheld('nothing-to-say')
  if (!isOver) return { what: 'postponed', at: new Date(deps.clock.now().getTime() + day), dueAgain: true }
  return later.map((bundle) => bundleTitle(language, namedBundle(bundle)))
}

/** The customer's page; `null` for a message that opens none. */
const linkOf = async (deps: Deps, message: ClaimedMessage): Promise<string | 'withdrawn' | null> => {
  const { linkId, linkSecret, orderId, madeBy } = message
  if (linkId === null || linkSecret === null) return null
  const isOpen = await openLinkOfMessage(deps, { id: linkId, orderId, secret: linkSecret, madeBy })
  return isOpen ? linkAddress(deps, linkSecret) : 'withdrawn'
}

type Head = { readonly messages: OwnMessages }

/** To a telephone: the shop's own words in the customer's language, or the usual short ones. */
const textOf = (
  { purpose }: ClaimedMessage,
  facts: MessageFacts,
  { messages }: Head,
  language: CustomerLanguage,
): string => {
  const own = ownWords(messages, purpose, language)
  const { texts } = language.messages
  return own === null
    ? texts[purpose === 'report' || purpose === 'new-time' ? purpose : 'estimate'](facts)
    : filledIn(own, templateValues(facts))
}

/** A shop has words of its own for every message but that of a new time, which is this order's alone. */
const ownWords = (
  messages: OwnMessages,
  purpose: ClaimedMessage['purpose'],
  language: CustomerLanguage,
): string | null => (purpose === 'new-time' ? null : messages[purpose][language.code])

const letterOf = async (
  deps: Deps,
  message: ClaimedMessage,
  facts: MessageFacts,
  head: Head,
  customer: Customer,
  to: string,
): Promise<Letter> => {
  const language = customerLanguages[customer.language]
  const own = ownWords(head.messages, message.purpose, language)
  const stop = stopAddress(deps, message.unsubscribe)
  const paragraphs = [
    letterText(language.messages, message.purpose, facts, own),
    language.messages.under({ ...facts, stop, about: choiceOf(message.purpose) }),
  ]
  return {
    id: message.id,
    createdAt: message.createdAt,
    from: facts.shop,
    to: { name: customer.name, address: to },
    language: language.code,
    subject: language.messages.subjects[message.purpose](facts),
    text: `${paragraphs.join('\n\n')}\n`,
    stop,
    attachment: message.purpose === 'report' ? await reportOf(deps, message.orderId) : null,
  }
}

const reportOf = async (deps: Deps, orderId: string): Promise<Letter['attachment']> => {
  const { bytes, number } = await getNewestReportBytes(deps, orderId)
  return bytes.length > mostAttachedBytes ? null : { fileName: `${number}.pdf`, bytes }
}
