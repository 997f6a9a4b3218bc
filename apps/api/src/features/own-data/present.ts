import { AskedChannel, AskedPurpose, MessageState } from '@bayledger/contract/messages'
import type { OwnDatum } from '@bayledger/contract/own-data'
import type { Entry } from '@bayledger/ledger/entry'
import { sidesNamedIn } from '@bayledger/ledger/sides'
import type { CustomerLanguage } from '@bayledger/wording/language'
import type { Registers } from './store.ts'

const datum = (about: string, at: Date | null, what: string, value: string): OwnDatum => ({
  about,
  at: at?.toISOString() ?? null,
  what,
  value,
})

/** The fields of a record that are not empty. */
const fieldsOf = (
  about: string,
  at: Date,
  fields: readonly (readonly [what: string, value: string | null])[],
): OwnDatum[] => fields.flatMap(([what, value]) => (value ? [datum(about, at, what, value)] : []))

/** What the registers hold: each of the customer's records, their vehicles, choices, messages and links. */
export const presentRegisters = ({ ownData: words }: CustomerLanguage, registers: Registers): OwnDatum[] => {
  const { fields } = words
  const yesNo = (is: boolean) => (is ? words.yes : words.no)
  return [
    ...registers.customers.flatMap((row) =>
      fieldsOf(words.customer, row.updatedAt, [
        [fields.name, row.name],
        [fields.phone, row.phone],
        [fields.email, row.email],
        [fields.language, row.language],
        [fields.mayCall, yesNo(row.mayCall)],
        [fields.mayText, yesNo(row.mayText)],
        [fields.mayEmail, yesNo(row.mayEmail)],
      ]),
    ),
    ...registers.vehicles.flatMap((row) =>
      fieldsOf(words.vehicle(row.description), row.updatedAt, [
        [fields.plate, row.plate],
        [fields.plateRegion, row.plateRegion],
        [fields.vin, row.vin],
        [fields.color, row.color],
        [fields.notes, row.notes],
      ]),
    ),
    ...registers.choices.map(({ purpose, channel, allowed, madeAt }) => {
      const said = [words.channels[AskedChannel.parse(channel)], words.purposes[AskedPurpose.parse(purpose)]]
      return datum(words.agreedTo, madeAt, said.join(' '), yesNo(allowed))
    }),
    ...registers.messages.flatMap(({ order, createdAt, endedAt, recipient, state, serverWords }) => [
      datum(order.number, createdAt, words.message, recipient ?? ''),
      datum(
        order.number,
        endedAt ?? createdAt,
        words.messageState,
        words.messageStates[MessageState.parse(state)],
      ),
      ...(serverWords === null ? [] : [datum(order.number, endedAt, words.serverSaid, serverWords)]),
    ]),
    ...registers.links.flatMap(({ order, createdAt, openings }) => [
      datum(order.number, createdAt, words.linkMade, ''),
      ...openings.map(({ openedAt }) => datum(order.number, openedAt, words.linkOpened, '')),
    ]),
  ]
}

/** What a write-up that was begun holds, as it was typed. */
export const presentDraft = (
  { ownData: words }: CustomerLanguage,
  { body, updatedAt }: { readonly body: unknown; readonly updatedAt: Date },
): OwnDatum => datum(words.draft, updatedAt, words.draft, JSON.stringify(body))

export const presentReport = (
  { ownData: words }: CustomerLanguage,
  { number, path, sealedAt }: { readonly number: string; readonly path: string; readonly sealedAt: Date },
): OwnDatum => datum(number, sealedAt, words.report, path)

/**
 * What one order holds, entry by entry: that it was written, the words, names and sums beside it, and of a photo its file.
 * The payloads themselves are left out: evidence there holds what was measured at visits of earlier owners.
 */
export const presentOrder = (
  { ownData: words, report }: CustomerLanguage,
  order: {
    readonly number: string
    readonly vehicle: string
    readonly entries: readonly Entry[]
  },
  texts: ReadonlyMap<string, string>,
  pathOfPhoto: (digest: string) => string | undefined,
): OwnDatum[] => [
  datum(order.number, null, words.brought, order.vehicle),
  ...order.entries.flatMap((entry) => {
    const at = new Date(entry.receivedAt)
    const sides = sidesNamedIn(entry).flatMap(({ digest }) => texts.get(digest) ?? [])
    const photo =
      entry.kind === 'photo.attached' ? [photoWords(words, entry.payload.digest, pathOfPhoto)] : []
    const values = [...sides, ...photo]
    return (values.length === 0 ? [''] : values).map((value) =>
      datum(order.number, at, report.people.kinds[entry.kind], value),
    )
  }),
]

const photoWords = (
  words: CustomerLanguage['ownData'],
  digest: string,
  pathOfPhoto: (digest: string) => string | undefined,
): string => {
  const path = pathOfPhoto(digest)
  return path === undefined ? words.photoNotHere(digest) : words.photo(path)
}
