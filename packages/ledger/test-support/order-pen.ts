import type { AdmitFacts } from '../src/admit/facts.ts'
import type { Appended } from '../src/append.ts'
import { digestOf } from '../src/digests.ts'
import type { Author, Draft, Entry, EntryOfKind, Given } from '../src/entry.ts'
import { ledgerPen, provenBy } from '../src/ledger-pen.ts'
import type { Kind, PayloadOf } from '../src/registry.ts'
import type { OrderState } from '../src/state.ts'
import { idOf } from './seeded-ids.ts'
import { agreedBy, factsAt, type Person, shopId, tablet } from './shop.ts'

export type How = {
  /** A person of the shop, a customer's link, or the server itself. */
  readonly by: Person | { readonly linkId: string } | 'system'
  /** Absent: the bay's tablet for people, none for the others. */
  readonly deviceId?: string | null
  readonly restsOn?: readonly string[]
  readonly facts?: Partial<AdmitFacts>
  readonly given?: Omit<Given, 'holds'>
  readonly id?: string
}

/**
 * Writes one order in memory, twenty seconds an entry and as long as the entry says, with ids that are the same at every
 * run.
 */
export type OrderPen = {
  readonly orderId: string
  readonly entries: () => readonly Entry[]
  readonly state: () => OrderState
  readonly now: () => string
  readonly draft: <K extends Kind>(kind: K, payload: PayloadOf<K>, how: How) => Draft
  /** Appends, or answers why not. */
  readonly attempt: <K extends Kind>(kind: K, payload: PayloadOf<K>, how: How) => Appended
  /** Appends. Throws when the entry is refused. */
  readonly write: <K extends Kind>(kind: K, payload: PayloadOf<K>, how: How) => EntryOfKind<K>
  /** Withdraws an entry, with a second person. */
  readonly strike: (entryId: string, by: Person, second?: Person | null) => Appended
}

/** A pen for a new order, or for one that goes on after entries written before under the same name. */
export const orderPen = (name = 'order', before: readonly Entry[] = []): OrderPen => {
  const pen = ledgerPen(shopId, idOf(`order/${name}`), before)
  let drafts = before.length

  let clock = Date.parse(before.at(-1)?.writtenAt ?? '2026-01-12T15:00:00.000Z')
  const now = () => new Date(clock).toISOString()

  const draft: OrderPen['draft'] = (kind, payload, how) => {
    drafts += 1
    clock += 20_000 + secondsOf(payload) * 1_000
    return pen.draft(kind, payload, {
      id: how.id ?? idOf(`entry/${name}/${pen.entries().length}/${drafts}/${kind}`),
      by: authorOf(how.by),
      deviceId: how.deviceId === undefined ? (isPerson(how.by) ? tablet : null) : how.deviceId,
      writtenAt: now(),
      restsOn: how.restsOn ?? [],
    })
  }

  const attempt: OrderPen['attempt'] = (kind, payload, how) => {
    const ready = draft(kind, payload, how)
    const facts = factsAt(ready.writtenAt, ready.writtenBy, {
      secondPersons: provenBy(ready),
      sheetsOnFile: sheetsIn(ready),
      ...how.facts,
    })
    return pen.attempt(ready, facts, how.given)
  }

  const write: OrderPen['write'] = (kind, payload, how) => {
    const appended = attempt(kind, payload, how)
    if (!appended.admitted)
      throw new Error(`${kind} is refused (${appended.code}): ${JSON.stringify(appended.values)}`)
    return appended.entry as EntryOfKind<typeof kind>
  }

  return {
    orderId: pen.orderId,
    entries: pen.entries,
    state: pen.state,
    now,
    draft,
    attempt,
    write,
    strike: (entryId, by, second = null) =>
      attempt(
        'entry.struck',
        { entryId, reason: 'wrong-value', words: null, secondPerson: second && agreedBy(second) },
        { by },
      ),
  }
}

const secondsOf = (payload: object): number =>
  'timed' in payload && payload.timed !== null ? (payload.timed as { seconds: number }).seconds : 0

/** The sheet that this entry names is on file. */
const sheetsIn = (draft: Draft): ReadonlySet<string> =>
  new Set(draft.kind === 'sheet.chosen' ? [digestOf(draft.payload.sheet)] : [])

const isPerson = (by: How['by']): by is Person => by !== 'system' && 'roles' in by

const authorOf = (by: How['by']): Author =>
  by === 'system'
    ? { kind: 'system' }
    : isPerson(by)
      ? { kind: 'staff', staffId: by.id }
      : { kind: 'customer', linkId: by.linkId }
