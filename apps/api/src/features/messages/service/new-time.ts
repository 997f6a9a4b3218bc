import type { BodyOf } from '@bayledger/contract/endpoint'
import { MessageChannel, type sendNewTime as sendEndpoint } from '@bayledger/contract/messages'
import type { DraftOfKind } from '@bayledger/ledger/entry'
import { versionOf } from '@bayledger/ledger/registry'
import { nextPromise } from '@bayledger/reckoning/ready/promise-slips'
import { aboutTime } from '@bayledger/reckoning/ready/ready-time'
import { customerLanguages } from '@bayledger/wording/customer-languages'
import { whenWords } from '@bayledger/wording/ready'
import type { StaffActor } from '../../../core/actor.ts'
import { AppError } from '../../../core/app-error.ts'
import type { Deps } from '../../../deps.ts'
import { getCustomer } from '../../customers/service.ts'
import { appendDraft } from '../../entries/service/append-draft.ts'
import { getReadiness } from '../../floor/service/ready-of-order.ts'
import { getLedger } from '../../orders/service.ts'
import { getSettings } from '../../settings/service.ts'
import { getVehicle } from '../../vehicles/service.ts'
import { hasAgreed } from '../policy.ts'
import { presentChoice } from '../present.ts'
import { refuseUnsendable } from '../service.ts'
import * as store from '../store.ts'

/** What to tell the customer of a promise that slips; `null` where none does. */
export const getNewTime = async (deps: Deps, orderId: string) => {
  const { state } = await getLedger(deps, orderId)
  const readiness = await getReadiness(deps, state)
  const { opened } = state
  if (!opened?.promisedAt || !readiness?.slips || readiness.ready.is !== 'about') return null
  const [customer, choices, vehicle, { shop }] = await Promise.all([
    getCustomer(deps, opened.customerId),
    store.listChoices(deps, opened.customerId),
    getVehicle(deps, opened.vehicleId),
    getSettings(deps),
  ])
  const language = customerLanguages[customer.language]
  const timeZone = shop.locations.find(({ id }) => id === state.locationId)?.timeZone ?? 'UTC'
  const now = deps.clock.now()
  const said = choices.map(presentChoice)
  const when = (instant: number) =>
    whenWords(new Date(instant).toISOString(), {
      locale: language.locale,
      timeZone,
      now: now.toISOString(),
    })
  return {
    sentence: language.ready.later({
      vehicle: vehicle.description,
      when: when(aboutTime(readiness.ready.at, now.getTime())),
      promised: when(Date.parse(opened.promisedAt)),
    }),
    promisedAt: new Date(nextPromise(readiness.ready.at)).toISOString(),
    channels: MessageChannel.options.filter(
      (channel) =>
        deps.carriers[channel] !== null &&
        (channel === 'email' ? customer.email : customer.phone) &&
        hasAgreed(customer, said, 'job', channel),
    ),
  }
}

/**
 * Promises another time and sends it to the customer: the entry and its message are written at once or neither.
 * @throws MESSAGE_NOT_SENT with what is missing
 */
export const sendNewTime = async (
  deps: Deps,
  actor: StaffActor,
  orderId: string,
  { entryId, promisedAt, channel }: BodyOf<typeof sendEndpoint>,
): Promise<{ readonly messageId: string }> => {
  const before = await store.findCausedBy(deps, entryId)
  if (before) return { messageId: before.id }
  const { state } = await getLedger(deps, orderId)
  await refuseUnsendable(deps, state, { purpose: 'new-time', channel })
  const at = deps.clock.now().toISOString()
  const draft: DraftOfKind<'stay.changed'> = {
    id: entryId,
    shopId: deps.shopId,
    orderId,
    kind: 'stay.changed',
    version: versionOf('stay.changed'),
    payload: { waitsHere: state.opened?.waitsHere ?? false, promisedAt },
    restsOn: [],
    writtenBy: { kind: 'staff', staffId: actor.staffId },
    deviceId: null,
    writtenAt: at,
  }
  const appended = await appendDraft(deps, draft, {
    sides: [],
    // The customer expects the vehicle today: it goes in the quiet hours too.
    messages: [
      { causedBy: entryId, purpose: 'new-time', channel, dueAt: at, inQuietHours: true, linkId: null },
    ],
  })
  const message = await store.findCausedBy(deps, entryId)
  // The same request came twice at once: the other one wrote it.
  if (message) return { messageId: message.id }
  if (appended.admitted) throw new Error(`no message was kept for ${entryId}`)
  throw new AppError({ code: 'ENTRY_REFUSED', why: 'ledger', refusal: appended }, { reason: appended.code })
}
