import { type Customer, CustomerContent, createCustomer } from '@bayledger/contract/customers'
import { putMessageChoice } from '@bayledger/contract/messages'
import { createBlankSheet } from '@bayledger/contract/sheets'
import { createVehicle, getVehicle, putVehicle, type Vehicle } from '@bayledger/contract/vehicles'
import type { LookFeeTerms } from '@bayledger/ledger/subjects/opening/kinds'
import type { LightBehavior } from '@bayledger/reckoning/evidence/evidence'
import { instantOf } from '@bayledger/reckoning/ready/zoned-time'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import type { OdometerBefore } from '@bayledger/reckoning/vehicle/judge-odometer'
import { readVin } from '@bayledger/reckoning/vehicle/vin'
import { draftEntry, newId, personal } from '../../../features/ledger/draft-entry.ts'
import { moneySide } from '../../../features/ledger/seal-money.ts'
import { sendEntries, type Writing } from '../../../features/ledger/write-entries.ts'
import { call } from '../../../lib/api-client.ts'
import { writeUpFaults } from '../../../lib/fault-words.ts'
import { typedOrNull } from '../../../lib/typed-text.ts'
import type { TypedFigure } from '../../../ui/number-text.ts'
import { comparedWith, odometerFault, odometerRead } from '../odometer.ts'
import { type EventAnswers, eventsAsEvidence } from './events.ts'
import { promiseFault } from './promise-fault.ts'

export type Person = {
  known: Customer | null
  name: string
  phone: string
  email: string
  /** How the customer may be reached about this service. */
  may: ('mayCall' | 'mayText' | 'mayEmail')[]
  /** What else the same ways may be used for; what is not here was answered with No. */
  also: ('retorque' | 'deferred' | 'recall')[]
  language: Customer['language']
}
export type Which = {
  known: Vehicle | null
  plate: string
  vin: string
  description: string
  color: string
  sheetId: string | null
  /** No sheet on file is of this kind: a blank one is begun with the order. */
  isNewKind: boolean
}

export type WriteUp = {
  person: Person
  which: Which
  words: string
  light: LightBehavior | 'not-known' | null
  events: EventAnswers
  askedEach: boolean
  waitsHere: 'here' | 'leaves' | null
  /** `null`: as this desk did last. */
  locationId: string | null
  promised: string
  /** `null`: today. */
  promisedOn: string | null
  odometer: TypedFigure
  /** An unlikely odometer was read a second time. */
  odometerTwice: boolean
  consent: ('look' | 'drive')[]
  consentBy: 'owner' | 'named-person' | 'fleet-contact' | 'driver' | null
  lookFee: LookFeeTerms | null
  /** Of whoever gave the consent, where that is not the customer. */
  consentName: string
  /** The order after which the vehicle came back. */
  comebackOf: { readonly orderId: string; readonly number: string } | null
}

/** What changes with the vehicle: what was said of another one does not go on. */
export const withVehicle = (form: WriteUp, which: Which): Partial<WriteUp> => {
  if (which.known?.vehicleId === form.which.known?.vehicleId) return { which }
  const isFree = form.comebackOf !== null
  return { which, odometerTwice: false, comebackOf: null, ...(isFree ? { lookFee: null } : {}) }
}

/** What each part of the form gets: the form, and how to change some of it. */
export type WriteUpPartProps = {
  readonly form: WriteUp
  readonly set: (change: Partial<WriteUp>) => void
}

export const blankWriteUp: WriteUp = {
  person: { known: null, name: '', phone: '', email: '', may: [], also: [], language: 'en' },
  which: { known: null, plate: '', vin: '', description: '', color: '', sheetId: null, isNewKind: false },
  words: '',
  light: null,
  events: {},
  askedEach: false,
  waitsHere: null,
  locationId: null,
  promised: '',
  promisedOn: null,
  odometer: null,
  odometerTwice: false,
  consent: [],
  consentBy: null,
  lookFee: null,
  consentName: '',
  comebackOf: null,
}

/**
 * What is missing or not acceptable, in words; `undefined` if the order can be opened. `before`: what the odometer read at
 * the vehicle's last visit.
 */
export const missingInWriteUp = (
  form: WriteUp,
  before: OdometerBefore | null,
  isPromisePast = false,
): string | undefined => {
  if (form.person.known === null && form.person.name.trim() === '') return writeUpFaults.nobody
  if (form.person.known === null && !isTelephone(form.person.phone)) return writeUpFaults.telephone
  if (form.person.known === null && !isEmail(form.person.email)) return writeUpFaults.email
  if (form.which.known === null && form.which.vin.trim() !== '' && !readVin(form.which.vin).ok)
    return writeUpFaults.vin
  if (form.which.known === null && form.which.description.trim() === '') return writeUpFaults.noVehicle
  if (form.which.sheetId === null && !form.which.isNewKind) return writeUpFaults.noSheet
  if (form.words.trim() === '') return writeUpFaults.noComplaint
  if (form.light === null) return writeUpFaults.noLight
  if (form.waitsHere === null) return writeUpFaults.noWaiting
  const promise = promiseFault(form.promised, form.promisedOn, isPromisePast)
  if (promise !== undefined) return promise
  if (!form.consent.includes('look')) return writeUpFaults.noConsent
  const odometer = odometerFault(form.odometer, comparedWith(before), form.odometerTwice)
  if (odometer !== undefined) return odometer
  if (form.consentBy === null) return writeUpFaults.consentByNobody
  if (form.consentBy !== 'owner' && form.consentName.trim() === '') return writeUpFaults.noConsentName
  if (form.lookFee === null) return writeUpFaults.noLookFee
  return undefined
}

const isTelephone = (typed: string): boolean =>
  typed.trim() === '' || CustomerContent.shape.phone.safeParse(typed).success

const isEmail = (typed: string): boolean =>
  typed.trim() === '' || CustomerContent.shape.email.safeParse(typed.trim()).success

/**
 * Ids of one write-up. What is sent again unchanged has the id that it had, so that nothing is made twice; what was
 * corrected in between gets another id, so that the correction is not taken for a repeat.
 */
export type WriteUpKeys = {
  orderId: string
  keys: Map<string, string>
  entries: Writing | null
}

/** The order has the id of the draft, so that a draft that two desks go on with opens one order. */
export const newWriteUpKeys = (orderId: string): WriteUpKeys => ({ orderId, keys: new Map(), entries: null })

/** The id for sending this content. */
export const keyFor = ({ keys }: Pick<WriteUpKeys, 'keys'>, content: unknown): string => {
  const of = JSON.stringify(content)
  const key = keys.get(of) ?? newId()
  keys.set(of, key)
  return key
}

export type WriteUpPlace = {
  locationId: string
  /** `null`: a blank one is begun. */
  sheet: SpecificationSheet | null
  lookFeeCents: number
  /** In the shop's zone, as 2026-01-12. */
  today: string
  timeZone: string
}

/** Adds customer and vehicle where they are new, then opens the order. Gives its id. */
export const openOrder = async (form: WriteUp, keys: WriteUpKeys, place: WriteUpPlace): Promise<string> => {
  const customer = form.person.known ?? (await addCustomer(form.person, keys))
  const sheet = place.sheet ?? (await beginSheet(form.which, keys))
  const vehicle =
    form.which.known === null
      ? await addVehicle({ ...form.which, sheetId: sheet.sheetId }, customer.customerId, keys)
      : await linked(form.which.known, sheet.sheetId, customer.customerId)
  keys.entries ??= openingEntries(form, keys.orderId, { ...place, sheet }, customer, vehicle)
  await sendEntries(keys.entries)
  return keys.orderId
}

const addCustomer = async ({ name, phone, email, may, also, language }: Person, keys: WriteUpKeys) => {
  const body = {
    name,
    phone: phone.trim() === '' ? null : phone,
    email: typedOrNull(email),
    mayText: may.includes('mayText'),
    mayEmail: may.includes('mayEmail'),
    mayCall: may.includes('mayCall'),
    language,
  }
  const customer = await call(createCustomer, { idempotencyKey: keyFor(keys, body), body })
  for (const way of may)
    for (const purpose of ['retorque', 'deferred', 'recall'] as const)
      await call(putMessageChoice, {
        params: { customerId: customer.customerId },
        body: { purpose, channel: channelOf[way], allowed: also.includes(purpose) },
      })
  return customer
}

const channelOf = { mayCall: 'call', mayText: 'text', mayEmail: 'email' } as const

/** A kind of vehicle is called what this one is called, until somebody names it better. */
const beginSheet = async ({ known, description }: Which, keys: WriteUpKeys): Promise<SpecificationSheet> => {
  const body = { name: (known?.description ?? description).trim() }
  return (await call(createBlankSheet, { idempotencyKey: keyFor(keys, { blank: body }), body })).sheet
}

/**
 * A vehicle on file without a sheet gets the one that was chosen for it, so that its next visit finds it; one that has changed
 * hands gets its new owner.
 */
const linked = async (known: Vehicle, sheetId: string, customerId: string): Promise<Vehicle> => {
  const isAsItWas = (vehicle: Vehicle) => vehicle.sheetId !== null && vehicle.customerId === customerId
  if (isAsItWas(known)) return known
  const { vehicleId } = known
  const newest = await call(getVehicle, { params: { vehicleId } })
  if (isAsItWas(newest)) return newest
  const { vehicleId: _id, version, ...content } = newest
  const body = { ...content, customerId, sheetId: newest.sheetId ?? sheetId }
  return call(putVehicle, { params: { vehicleId }, version, body })
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
  { locationId, sheet, lookFeeCents, today, timeZone }: WriteUpPlace & { sheet: SpecificationSheet },
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
        promisedAt: instantOf(form.promisedOn ?? today, form.promised, timeZone),
        odometer: odometerRead(form.odometer),
        odometerConfirmed: form.odometerTwice,
        comebackOf: form.comebackOf?.orderId ?? null,
      }),
      draftEntry(orderId, 'complaint.recorded', {
        words: words.digest,
        reportedLight: form.light === 'not-known' ? null : form.light,
        events: eventsAsEvidence(form.events, form.askedEach),
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

/** Whether anything was typed that would be missed. */
export const isWorthKeeping = ({ person, which, words, light, events }: WriteUp): boolean =>
  words.trim() !== '' ||
  light !== null ||
  Object.keys(events).length > 0 ||
  (person.known === null && `${person.name}${person.phone}${person.email}`.trim() !== '') ||
  (which.known === null && `${which.plate}${which.vin}${which.description}`.trim() !== '')
