import type { BodyOf } from '@bayledger/contract/endpoint'
import type {
  AgreedChoice,
  Message,
  MessageChoice,
  sendMessage as sendEndpoint,
} from '@bayledger/contract/messages'
import { AskedChannel, AskedPurpose, ChoicePurpose, MessageChannel } from '@bayledger/contract/messages'
import type { DraftOfKind } from '@bayledger/ledger/entry'
import { versionOf } from '@bayledger/ledger/registry'
import type { OrderState } from '@bayledger/ledger/state'
import { customerLanguages } from '@bayledger/wording/customer-languages'
import { v7 as newId } from 'uuid'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { type Deps, forShop, type Parts } from '../../deps.ts'
import { getCustomer } from '../customers/service.ts'
import { appendDraft } from '../entries/service/append-draft.ts'
import { getLedger } from '../orders/service.ts'
import { getSettings } from '../settings/service.ts'
import { choiceOf, hasAgreed } from './policy.ts'
import { askedAt, presentChoice, presentMessage } from './present.ts'
import { quietUntil } from './service/quiet-hours.ts'
import { stopPage } from './service/stop-page.ts'
import * as store from './store.ts'

type Asked = BodyOf<typeof sendEndpoint>

export const listMessages = async (deps: Deps, orderId: string) => {
  const { state } = await getLedger(deps, orderId)
  const customerId = state.opened?.customerId ?? ''
  const [rows, choices, customer, { shop, head }] = await Promise.all([
    store.listMessages(deps, orderId),
    store.listChoices(deps, customerId),
    getCustomer(deps, customerId),
    getSettings(deps),
  ])
  const said = choices.map(presentChoice)
  const now = deps.clock.now()
  const timeZone = shop.locations.find(({ id }) => id === state.locationId)?.timeZone ?? 'UTC'
  return {
    messages: rows.map(presentMessage),
    carriers: { email: deps.carriers.email !== null, text: deps.carriers.text !== null },
    choices: ChoicePurpose.options.flatMap((purpose) =>
      MessageChannel.options.map((channel) => ({
        purpose,
        channel,
        allowed: hasAgreed(customer, said, purpose, channel),
      })),
    ),
    goesAt: (quietUntil(now, timeZone, head.quietHours) ?? now).toISOString(),
    linksOpenElsewhere: !['localhost', '127.0.0.1', '[::1]'].includes(new URL(deps.publicAddress).hostname),
  }
}

/**
 * Sends the estimate or the report. The estimate goes with the entry that says it was shown, both written at once or neither.
 * @throws MESSAGE_NOT_SENT with what is missing
 */
export const sendMessage = async (
  deps: Deps,
  actor: StaffActor,
  orderId: string,
  asked: Asked,
): Promise<{ readonly messageId: string }> => {
  const before = await store.findCausedBy(deps, asked.entryId)
  if (before) return { messageId: before.id }
  const { state } = await getLedger(deps, orderId)
  await refuseUnsendable(deps, state, asked)
  if (asked.purpose === 'estimate') await appendShown(deps, actor, state, asked)
  else
    await store.insertMessage(deps, {
      id: newId(),
      orderId,
      purpose: 'report',
      channel: asked.channel,
      causedBy: asked.entryId,
      madeBy: { kind: 'staff', staffId: actor.staffId },
      inQuietHours: asked.inQuietHours,
    })
  const message = await store.findCausedBy(deps, asked.entryId)
  if (!message) throw new Error(`no message was kept for ${asked.entryId}`)
  return { messageId: message.id }
}

export const refuseUnsendable = async (
  deps: Deps,
  state: OrderState,
  { purpose, channel }: Pick<Message, 'purpose' | 'channel'>,
): Promise<void> => {
  const customer = await getCustomer(deps, state.opened?.customerId ?? '')
  const choices = (await store.listChoices(deps, customer.customerId)).map(presentChoice)
  const not = (why: 'no-mail-server' | 'no-text-folder' | 'no-address' | 'no-number' | 'not-agreed') =>
    new AppError({ code: 'MESSAGE_NOT_SENT', why })
  if (deps.carriers[channel] === null) throw not(channel === 'email' ? 'no-mail-server' : 'no-text-folder')
  if (!(channel === 'email' ? customer.email : customer.phone))
    throw not(channel === 'email' ? 'no-address' : 'no-number')
  if (!hasAgreed(customer, choices, choiceOf(purpose), channel)) throw not('not-agreed')
  if (purpose === 'estimate' && state.estimates.length === 0)
    throw new AppError({ code: 'MESSAGE_NOT_SENT', why: 'no-estimate' })
  if (purpose === 'report' && state.reports.length === 0)
    throw new AppError({ code: 'MESSAGE_NOT_SENT', why: 'no-report' })
}

const appendShown = async (
  deps: Deps,
  actor: StaffActor,
  state: OrderState,
  { entryId, channel, inQuietHours }: Asked,
): Promise<void> => {
  const linkId = newId()
  const at = deps.clock.now().toISOString()
  const draft: DraftOfKind<'estimate.shown'> = {
    id: entryId,
    shopId: deps.shopId,
    orderId: state.orderId,
    kind: 'estimate.shown',
    version: versionOf('estimate.shown'),
    payload: { revision: state.estimates.at(-1)?.scope.revision ?? 1, channel: 'link', linkId },
    restsOn: [],
    writtenBy: { kind: 'staff', staffId: actor.staffId },
    deviceId: null,
    writtenAt: at,
  }
  const appended = await appendDraft(deps, draft, {
    sides: [],
    messages: [{ causedBy: entryId, purpose: 'estimate', channel, dueAt: at, inQuietHours, linkId }],
  })
  // The same request came twice at once: the other one wrote it.
  if (!appended.admitted && !(await store.findCausedBy(deps, entryId)))
    throw new AppError({ code: 'ENTRY_REFUSED', why: 'ledger', refusal: appended }, { reason: appended.code })
}

export const withdrawMessage = async (deps: Deps, orderId: string, messageId: string): Promise<void> => {
  if (!(await store.withdrawMessage(deps, orderId, messageId)))
    throw new AppError({ code: 'MESSAGE_NOT_WAITING' })
}

/** What a customer agrees to, of everything that is asked. @throws CUSTOMER_NOT_FOUND */
export const listChoices = async (deps: Deps, customerId: string): Promise<AgreedChoice[]> => {
  const customer = await getCustomer(deps, customerId)
  const rows = await store.listChoices(deps, customerId)
  const said = rows.map(presentChoice)
  return AskedPurpose.options.flatMap((purpose) =>
    AskedChannel.options.map((channel) => ({
      purpose,
      channel,
      allowed: hasAgreed(customer, said, purpose, channel),
      askedAt: askedAt(rows, purpose, channel),
    })),
  )
}

export const putChoice = async (
  deps: Deps,
  actor: StaffActor,
  customerId: string,
  choice: MessageChoice,
): Promise<void> => {
  await getCustomer(deps, customerId)
  const madeBy = { kind: 'staff', staffId: actor.staffId }
  await store.insertChoice(deps, { id: newId(), customerId, ...choice, madeBy })
}

/** The page behind a link that ends messages, and on `end` what it does. `null`: there is no such link. */
export const stopMessages = async (
  parts: Parts,
  token: string,
  does: 'ask' | 'end',
): Promise<{ readonly status: 200 | 404; readonly bytes: Uint8Array }> => {
  const message = await store.findByStopToken(parts, token)
  if (!message) return { status: 404, bytes: stopPage({ does: 'unknown' }) }
  const { purpose, channel } = presentMessage(message)
  const { customer } = message.order
  const deps = forShop(parts, message.shopId)
  const about = choiceOf(purpose)
  if (does === 'end')
    await store.insertChoice(deps, {
      id: newId(),
      customerId: customer.id,
      purpose: about,
      channel,
      allowed: false,
      madeBy: { kind: 'customer', messageId: message.id },
    })
  const [{ shop }, { language }] = await Promise.all([getSettings(deps), getCustomer(deps, customer.id)])
  return {
    status: 200,
    bytes: stopPage({
      does: does === 'end' ? 'done' : 'ask',
      purpose: about,
      shop: shop.name,
      language: customerLanguages[language],
    }),
  }
}
