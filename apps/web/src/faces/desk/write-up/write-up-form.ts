import { type Customer, CustomerContent, createCustomer } from '@bayledger/contract/customers'
import { createVehicle, type Vehicle } from '@bayledger/contract/vehicles'
import type { LookFeeTerms } from '@bayledger/ledger/subjects/opening/kinds'
import type { EventEvidence, LightBehavior } from '@bayledger/reckoning/evidence/evidence'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import type { OdometerBefore } from '@bayledger/reckoning/vehicle/judge-odometer'
import { readVin } from '@bayledger/reckoning/vehicle/vin'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { draftEntry, newId, personal } from '../../../features/ledger/draft-entry.ts'
import { moneySide } from '../../../features/ledger/seal-money.ts'
import { sendEntries, type Writing } from '../../../features/ledger/write-entries.ts'
import { call } from '../../../lib/api-client.ts'
import { typedOrNull } from '../../../lib/typed-text.ts'
import type { TypedFigure } from '../../../ui/number-text.ts'
import { comparedWith, odometerFault, odometerRead } from '../odometer.ts'
import { eventsAsEvidence } from './events.ts'

export type Person = { known: Customer | null; name: string; phone: string }
export type Which = {
  known: Vehicle | null
  plate: string
  vin: string
  description: string
  color: string
  sheetId: string | null
}

export type WriteUp = {
  person: Person
  which: Which
  words: string
  light: LightBehavior | 'not-known' | null
  events: EventEvidence['kind'][]
  eventWheels: Partial<Record<EventEvidence['kind'], WheelPosition>>
  askedEach: boolean
  waitsHere: 'here' | 'leaves' | null
  /** `null`: as this desk did last. */
  locationId: string | null
  promised: string
  odometer: TypedFigure
  /** An unlikely odometer was read a second time. */
  odometerTwice: boolean
  consent: ('look' | 'drive')[]
  consentBy: 'owner' | 'named-person' | 'fleet-contact' | 'driver' | null
  lookFee: LookFeeTerms | null
  /** Of whoever gave the consent, where that is not the customer. */
  consentName: string
}

/** What each part of the form gets: the form, and how to change some of it. */
export type WriteUpPartProps = {
  readonly form: WriteUp
  readonly set: (change: Partial<WriteUp>) => void
}

export const blankWriteUp: WriteUp = {
  person: { known: null, name: '', phone: '' },
  which: { known: null, plate: '', vin: '', description: '', color: '', sheetId: null },
  words: '',
  light: null,
  events: [],
  eventWheels: {},
  askedEach: false,
  waitsHere: null,
  locationId: null,
  promised: '',
  odometer: null,
  odometerTwice: false,
  consent: [],
  consentBy: null,
  lookFee: null,
  consentName: '',
}

/**
 * What is missing or not acceptable, in words; `undefined` if the order can be opened. `before`: what the odometer read at
 * the vehicle's last visit.
 */
export const missingInWriteUp = (form: WriteUp, before: OdometerBefore | null): string | undefined => {
  if (form.person.known === null && form.person.name.trim() === '') return 'Whose vehicle is it? Type a name.'
  if (form.person.known === null && !isTelephone(form.person.phone))
    return 'The telephone number takes 7 to 24 digits, spaces, and the signs + ( ) - and the point; or leave it empty.'
  if (form.which.known === null && form.which.vin.trim() !== '' && !readVin(form.which.vin).ok)
    return 'The VIN cannot be right: read it again, or leave it empty.'
  if (form.which.known === null && form.which.description.trim() === '') return 'Which vehicle is it?'
  if (form.which.sheetId === null) return 'Choose the specification sheet.'
  if (form.words.trim() === '') return 'Write down the complaint in the customer’s own words.'
  if (form.light === null) return 'Ask what the light does; "does not know" is an answer.'
  if (form.waitsHere === null) return 'Does the customer wait here?'
  if (!form.consent.includes('look')) return 'Record consent to inspect first.'
  const odometer = odometerFault(form.odometer, comparedWith(before), form.odometerTwice)
  if (odometer !== undefined) return odometer
  if (form.consentBy === null) return 'Who gave the consent?'
  if (form.consentBy !== 'owner' && form.consentName.trim() === '')
    return 'Write the name of the person who gave the consent.'
  if (form.lookFee === null) return 'Choose the inspection fee before the inspection begins.'
  return undefined
}

const isTelephone = (typed: string): boolean =>
  typed.trim() === '' || CustomerContent.shape.phone.safeParse(typed).success

/**
 * Ids of one write-up. What is sent again unchanged has the id that it had, so that nothing is made twice; what was
 * corrected in between gets another id, so that the correction is not taken for a repeat.
 */
export type WriteUpKeys = {
  orderId: string
  keys: Map<string, string>
  entries: Writing | null
}

export const newWriteUpKeys = (): WriteUpKeys => ({ orderId: newId(), keys: new Map(), entries: null })

/** The id for sending this content. */
export const keyFor = ({ keys }: Pick<WriteUpKeys, 'keys'>, content: unknown): string => {
  const of = JSON.stringify(content)
  const key = keys.get(of) ?? newId()
  keys.set(of, key)
  return key
}

export type WriteUpPlace = {
  locationId: string
  sheet: SpecificationSheet
  lookFeeCents: number
  today: string
}

/** Adds customer and vehicle where they are new, then opens the order. Gives its id. */
export const openOrder = async (form: WriteUp, keys: WriteUpKeys, place: WriteUpPlace): Promise<string> => {
  const customer = form.person.known ?? (await addCustomer(form.person, keys))
  const vehicle = form.which.known ?? (await addVehicle(form.which, customer.customerId, keys))
  keys.entries ??= openingEntries(form, keys.orderId, place, customer, vehicle)
  await sendEntries(keys.entries)
  return keys.orderId
}

const addCustomer = ({ name, phone }: Person, keys: WriteUpKeys) => {
  const body = {
    name,
    phone: phone.trim() === '' ? null : phone,
    email: null,
    mayText: false,
    mayEmail: false,
    mayCall: phone.trim() !== '',
  }
  return call(createCustomer, { idempotencyKey: keyFor(keys, body), body })
}

const addVehicle = (which: Which, customerId: string, keys: WriteUpKeys) => {
  const body = {
    customerId,
    plate: typedOrNull(which.plate.toUpperCase()),
    plateRegion: null,
    vin: typedOrNull(which.vin),
    description: which.description,
    color: typedOrNull(which.color),
    notes: null,
    sheetId: which.sheetId,
  }
  return call(createVehicle, { idempotencyKey: keyFor(keys, body), body })
}

const openingEntries = (
  form: WriteUp,
  orderId: string,
  { locationId, sheet, lookFeeCents, today }: WriteUpPlace,
  customer: Customer,
  vehicle: Vehicle,
): Writing => {
  const words = personal(form.words.trim())
  const name = personal(form.consentBy === 'owner' ? customer.name : form.consentName.trim())
  const fee = moneySide({ lookFeeCents: form.lookFee === 'waived' ? 0 : lookFeeCents })
  return {
    entries: [
      draftEntry(orderId, 'order.opened', {
        locationId,
        customerId: customer.customerId,
        vehicleId: vehicle.vehicleId,
        waitsHere: form.waitsHere === 'here',
        promisedAt: form.promised === '' ? null : new Date(`${today}T${form.promised}`).toISOString(),
        odometer: odometerRead(form.odometer),
        odometerConfirmed: form.odometerTwice,
        comebackOf: null,
      }),
      draftEntry(orderId, 'complaint.recorded', {
        words: words.digest,
        reportedLight: form.light === 'not-known' ? null : form.light,
        events: eventsAsEvidence(form.events, form.eventWheels, form.askedEach),
      }),
      draftEntry(orderId, 'sheet.chosen', { sheet }),
      draftEntry(orderId, 'authority.given', {
        to: [...form.consent],
        by: { relation: form.consentBy ?? 'owner', name: name.digest },
        channel: 'in-person',
        money: fee.digest,
        lookFee: form.lookFee ?? 'charged',
      }),
    ],
    sides: [words, name, fee],
  }
}
