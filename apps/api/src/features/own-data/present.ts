import type { OwnDatum } from '@bayledger/contract/own-data'
import type { Entry } from '@bayledger/ledger/entry'
import { sidesNamedIn } from '@bayledger/ledger/sides'
import { english } from '@bayledger/wording/en/english'
import { languageNames } from '@bayledger/wording/language-names'
import type { Registers } from './store.ts'

const datum = (about: string, at: Date | null, what: string, value: string): OwnDatum => ({
  about,
  at: at?.toISOString() ?? null,
  what,
  value,
})
const yesNo = (is: boolean) => (is ? 'yes' : 'no')

/** The named fields of a record that are not empty. */
const fieldsOf = (
  about: string,
  at: Date,
  fields: Readonly<Record<string, string | null | undefined>>,
): OwnDatum[] =>
  Object.entries(fields).flatMap(([what, value]) => (value ? [datum(about, at, what, value)] : []))

/** What the registers hold: each of the customer's records, their vehicles, choices, messages and links. */
export const presentRegisters = (registers: Registers): OwnDatum[] => [
  ...registers.customers.flatMap((customer) =>
    fieldsOf('customer', customer.updatedAt, {
      name: customer.name,
      telephone: customer.phone,
      'e-mail': customer.email,
      language: customer.language === 'es' ? languageNames.es : languageNames.en,
      'may be called': yesNo(customer.mayCall),
      'may be texted': yesNo(customer.mayText),
      'may be e-mailed': yesNo(customer.mayEmail),
    }),
  ),
  ...registers.vehicles.flatMap((vehicle) =>
    fieldsOf(`vehicle ${vehicle.description}`, vehicle.updatedAt, {
      plate: vehicle.plate,
      'state of the plate': vehicle.plateRegion,
      VIN: vehicle.vin,
      color: vehicle.color,
      notes: vehicle.notes,
    }),
  ),
  ...registers.choices.map(({ purpose, channel, allowed, madeAt }) =>
    datum('messages', madeAt, `${channel}, ${purpose}`, allowed ? 'agreed' : 'not agreed'),
  ),
  ...registers.messages.map((message) =>
    datum(
      message.order.number,
      message.createdAt,
      `message by ${message.channel}, ${message.purpose}`,
      [message.state, message.recipient].filter(Boolean).join(', '),
    ),
  ),
  ...registers.links.flatMap(({ order, createdAt, openings }) => [
    datum(order.number, createdAt, 'link', 'made'),
    ...openings.map(({ openedAt }) => datum(order.number, openedAt, 'link', 'opened')),
  ]),
]

/**
 * What one order holds, entry by entry: that it was written, the words, names and sums beside it, and of a photo its digest.
 * The payloads themselves are left out: evidence there holds what was measured at visits of earlier owners.
 */
export const presentOrder = (
  number: string,
  vehicle: string,
  entries: readonly Entry[],
  texts: ReadonlyMap<string, string>,
): OwnDatum[] => [
  datum(number, null, 'vehicle', vehicle),
  ...entries.flatMap((entry) => {
    const at = new Date(entry.receivedAt)
    const what = english.report.people.kinds[entry.kind]
    const sides = sidesNamedIn(entry).flatMap(({ digest }) => texts.get(digest) ?? [])
    const photo = entry.kind === 'photo.attached' ? [`photo ${entry.payload.digest}`] : []
    const values = [...sides, ...photo]
    return (values.length === 0 ? [''] : values).map((value) => datum(number, at, what, value))
  }),
]
