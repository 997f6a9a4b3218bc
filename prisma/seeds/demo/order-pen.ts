import type { AdmitFacts } from '@bayledger/ledger/admit/facts'
import { canonicalText, digestOf, sideDigest } from '@bayledger/ledger/digests'
import type { Draft, Entry, Given } from '@bayledger/ledger/entry'
import { ledgerPen, provenBy } from '@bayledger/ledger/ledger-pen'
import { comebackFacts, coversOfScope } from '@bayledger/ledger/questions/comeback'
import { historyOf } from '@bayledger/ledger/questions/history-of'
import type { MoneySides } from '@bayledger/ledger/questions/money'
import type { Kind, PayloadOf } from '@bayledger/ledger/registry'
import type { SecondPerson } from '@bayledger/ledger/second-person'
import type { OrderState } from '@bayledger/ledger/state'
import type { HistoryEvidence } from '@bayledger/reckoning/evidence/evidence'
import type { ComebackFacts } from '@bayledger/reckoning/money/line-cover'
import { usualWarranty } from '@bayledger/reckoning/money/warranty'
import { dayIn } from '@bayledger/reckoning/ready/zoned-time'
import type { DemoCalendar } from './calendar.ts'
import type { DemoInstrument } from './instruments.ts'
import { type DemoPerson, people } from './people.ts'
import { shopId, tamberStreet } from './places.ts'
import { demoId, demoSalt } from './seeded.ts'
import { discountLimits } from './settings.ts'
import { sheets } from './sheets.ts'

/** A side that a payload names by HMAC-SHA-256 under the salt (32 bytes in base64). */
export type DemoSide = { readonly digest: string; readonly salt: string; readonly text: string }

/** A photo whose entry names it by the SHA-256 of its bytes. */
export type DemoPhoto = { readonly digest: string; readonly bytes: Uint8Array }

/** One entry on its way into a ledger, with the sides it names and what the server gives it. */
export type DemoLine = {
  readonly draft: Draft
  readonly sides: readonly DemoSide[]
  readonly given: Omit<Given, 'holds'>
  readonly receivedAt: string
}

export type How = {
  /** Time of the demo day, `09:12` or `09:12:30`. */
  readonly at: string
  /** Who writes it; absent: the server itself. */
  readonly by?: DemoPerson
  readonly deviceId?: string
  readonly restsOn?: readonly string[]
}

/** Writes one order of the demo in memory, with the sides that its entries name. */
export type OrderPen = {
  readonly number: string
  readonly orderId: string
  readonly calendar: DemoCalendar
  readonly state: () => OrderState
  /** What the shop's other records say of this vehicle. */
  readonly history: () => HistoryEvidence
  /** What the warranty of a comeback rests on; `null`: it is joined to no earlier order. */
  readonly comeback: () => ComebackFacts | null
  readonly entries: () => readonly Entry[]
  readonly lines: () => readonly DemoLine[]
  /** A second person who has typed their PIN, as the next entry names them. */
  readonly agreedBy: (person: DemoPerson) => SecondPerson
  /** The digest of personal words; they travel with the next entry. */
  readonly personal: (text: string) => string
  /** The digest of what a customer was shown; it travels with the next entry. */
  readonly shown: (text: string) => string
  /** The digest of a money side; it travels with the next entry, and the same money is put into a side once. */
  readonly money: (content: object) => string
  /** Keeps the bytes of a photo that an entry names. */
  readonly carries: (photo: DemoPhoto) => void
  readonly photos: () => readonly DemoPhoto[]
  /** Every money side of the order so far, text by digest. */
  readonly moneySides: () => MoneySides
  /** An entry made ready for the ledger and not appended: what only the loader can write. */
  readonly line: <K extends Kind>(kind: K, payload: PayloadOf<K>, how: How) => DemoLine
  /** Appends an entry. Throws when the ledger refuses it: a demo that the product would not accept is a mistake here. */
  readonly write: <K extends Kind>(kind: K, payload: PayloadOf<K>, how: How) => Entry
}

/** What the shop knows of a vehicle from before: its finished orders, and the IDs it carries that were last heard on another. */
export type KnownBefore = {
  readonly visits: readonly OrderState[]
  readonly idsOnOtherVehicles: readonly string[]
}

const neverSeen: KnownBefore = { visits: [], idsOnOtherVehicles: [] }

/** Opens a pen for the order of this number. Registers are the instruments as of this morning. */
export const orderPen = (
  number: string,
  calendar: DemoCalendar,
  instruments: readonly DemoInstrument[],
  known: KnownBefore = neverSeen,
): OrderPen => {
  const pen = ledgerPen(shopId, demoId(`order/${number}`))
  const lines: DemoLine[] = []
  const photos: DemoPhoto[] = []
  const history = () => historyOf(pen.state(), known.visits, known.idsOnOtherVehicles)
  const comeback = () => {
    const joined = joinedTo(pen.state(), known.visits)
    return joined.length === 0 ? null : comebackFacts(pen.state(), joined, usualWarranty, shopDay)
  }
  let waiting: DemoSide[] = []
  let sides = 0
  let agreements = 0
  const moneyTexts = new Map<string, string>()

  const side = (text: string) => {
    sides += 1
    const salt = demoSalt(`${number}/${sides}`)
    const digest = sideDigest(text, salt)
    waiting.push({ digest, salt: Buffer.from(salt).toString('base64'), text })
    return digest
  }

  const agreedBy: OrderPen['agreedBy'] = ({ id }) => {
    agreements += 1
    const token = Buffer.from(demoSalt(`${number}/agreed/${agreements}`)).toString('base64url')
    return { staffId: id, proof: { how: 'pin', token } }
  }

  const money = (content: object) => {
    const text = canonicalText(content)
    const known = [...moneyTexts].find(([, kept]) => kept === text)?.[0]
    const digest = known ?? side(text)
    moneyTexts.set(digest, text)
    return digest
  }

  const line: OrderPen['line'] = (kind, payload, how) => {
    const writtenAt = calendar.at(how.at)
    const ready = {
      draft: pen.draft(kind, payload, {
        id: demoId(`entry/${number}/${kind}/${lines.length + 1}`),
        by: how.by ? { kind: 'staff', staffId: how.by.id } : { kind: 'system' },
        deviceId: how.deviceId ?? null,
        writtenAt,
        restsOn: how.restsOn ?? [],
      }),
      sides: waiting,
      given: kind === 'order.opened' ? { orderNumber: number } : {},
      receivedAt: writtenAt,
    }
    waiting = []
    return ready
  }

  const write: OrderPen['write'] = (kind, payload, how) => {
    const ready = line(kind, payload, how)
    const { draft, given, receivedAt } = ready
    const last = pen.entries().at(-1)
    if (last && last.writtenAt > draft.writtenAt)
      throw new RangeError(`${number}: ${kind} at ${how.at} comes before ${last.kind}, written earlier`)
    const appended = pen.attempt(
      draft,
      factsAt(receivedAt, draft, {
        money: moneyTexts,
        instruments,
        history: kind === 'diagnosis.issued' ? history() : null,
        covers: coversFor(draft, pen.state(), moneyTexts, comeback()),
        known,
      }),
      given,
    )
    if (!appended.admitted)
      throw new Error(
        `${number}: ${kind} at ${how.at} is refused (${appended.code}): ${JSON.stringify(appended.values)}`,
      )
    lines.push(ready)
    return appended.entry
  }

  return {
    number,
    orderId: pen.orderId,
    calendar,
    state: pen.state,
    history,
    comeback,
    entries: pen.entries,
    lines: () => lines,
    agreedBy,
    personal: side,
    shown: side,
    money,
    carries: (photo) => photos.push(photo),
    photos: () => photos,
    moneySides: () => moneyTexts,
    line,
    write,
  }
}

const shopDay = (instant: string): string => dayIn(new Date(instant), tamberStreet.timeZone)

/** The order that one is joined to, and those that one is joined to itself, as far as the vehicle was here. */
const joinedTo = ({ opened }: OrderState, visits: readonly OrderState[]): OrderState[] => {
  const earlier = visits.find(({ orderId }) => orderId === opened?.comebackOf)
  return earlier === undefined ? [] : [earlier, ...joinedTo(earlier, visits)]
}

const coversFor = (
  draft: Draft,
  { comeback }: OrderState,
  money: MoneySides,
  facts: ComebackFacts | null,
): AdmitFacts['covers'] =>
  draft.kind === 'estimate.issued' && comeback && facts
    ? coversOfScope(draft.payload.scope, money, { ...facts, cause: comeback.cause })
    : null

const sheetsOnFile: ReadonlySet<string> = new Set(Object.values(sheets).map(digestOf))

const factsAt = (
  now: string,
  draft: Draft,
  {
    money,
    instruments,
    history,
    covers,
    known,
  }: {
    readonly money: MoneySides
    readonly instruments: readonly DemoInstrument[]
    readonly history: HistoryEvidence | null
    readonly covers: AdmitFacts['covers']
    readonly known: KnownBefore
  },
): AdmitFacts => ({
  now,
  author: draft.writtenBy,
  staff: new Map(Object.values(people).map(({ id, roles }) => [id, roles])),
  secondPersons: provenBy(draft),
  refusedIds: new Set(),
  wrenches: new Map(
    instruments
      .filter(({ kind, dueOn }) => kind === 'wrench' && dueOn !== null)
      .map(({ id, dueOn, cycles, quarantined, body }) => [
        id,
        {
          dueOn: dueOn ?? '',
          cycles,
          quarantined,
          rangeLow: Number(body.rangeLow),
          rangeHigh: Number(body.rangeHigh),
          rangeUnit: 'lbf·ft' as const,
        },
      ]),
  ),
  gaugesInQuarantine: new Set<string>(),
  gauges: new Set(
    instruments.filter(({ kind, quarantined }) => kind === 'gauge' && !quarantined).map(({ id }) => id),
  ),
  history,
  earlierOdometer: null,
  comebackIsOfVehicle: null,
  covers,
  vehicleIsOfCustomer: null,
  secondPersonRequired: true,
  discountLimits,
  idsOnOtherVehicles: new Set(known.idsOnOtherVehicles),
  stock: new Map(),
  sheetsOnFile,
  money,
})
