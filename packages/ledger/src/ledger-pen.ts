import { admitHeard, heardOf } from './admit/admit-heard.ts'
import type { AdmitFacts } from './admit/facts.ts'
import { agreementOf, secondPersonIn } from './agreement.ts'
import { type Appended, chainEntry } from './append.ts'
import { type Author, type Draft, type Entry, type Given, noHash } from './entry.ts'
import { advance, type Folded, foldAll } from './fold.ts'
import { type Kind, type PayloadOf, versionOf } from './registry.ts'
import { blankOrder, type OrderState } from './state.ts'

/** What an entry has beside its kind and payload. */
export type Envelope = {
  readonly id: string
  readonly by: Author
  readonly deviceId: string | null
  /** UTC text. */
  readonly writtenAt: string
  readonly restsOn: readonly string[]
}

/** Writes one order in memory. Nothing gets into it that the ledger does not admit. */
export type LedgerPen = {
  readonly orderId: string
  readonly entries: () => readonly Entry[]
  readonly state: () => OrderState
  /** A draft of the present version of its kind. */
  readonly draft: <K extends Kind>(kind: K, payload: PayloadOf<K>, envelope: Envelope) => Draft
  /** Appends the draft as received at `facts.now`, or says why not. */
  readonly attempt: (
    draft: Draft,
    facts: AdmitFacts,
    given?: Omit<Given, 'holds'>,
    /** How much its writer had heard; left out: everything. */
    heard?: { readonly seq: number; readonly waited: boolean },
  ) => Appended
}

/**
 * A pen for a new order, or for one that goes on after entries written before. It admits against a kept state that each
 * entry advances, as the server does.
 */
export const ledgerPen = (shopId: string, orderId: string, before: readonly Entry[] = []): LedgerPen => {
  const entries: Entry[] = [...before]
  let folded: Folded | null = before.length > 0 ? foldAll(before) : null
  const state = () => folded?.state ?? blankOrder(shopId, orderId)

  return {
    orderId,
    entries: () => entries,
    state,
    draft: (kind, payload, { id, by, deviceId, writtenAt, restsOn }) =>
      ({
        id,
        shopId,
        orderId,
        kind,
        version: versionOf(kind),
        payload,
        restsOn,
        writtenBy: by,
        deviceId,
        writtenAt,
      }) as Draft,
    attempt: (draft, facts, given = {}, heard = undefined) => {
      const known = heard ? heardOf(entries, draft, heard) : null
      const verdict = admitHeard(state(), draft, facts, known)
      if (!verdict.admitted) return verdict
      const last = entries.at(-1)
      const head = { seq: last?.seq ?? 0, hash: last?.hash ?? noHash }
      const withHolds = verdict.holds.length > 0 ? { ...given, holds: [...verdict.holds] } : given
      const entry = chainEntry(draft, head, { at: facts.now, given: withHolds })
      entries.push(entry)
      folded = advance(folded, entry)
      return { admitted: true, entry }
    },
  }
}

/** What the server knows once the second person whom this entry names has typed their PIN for it. */
export const provenBy = (draft: Draft): AdmitFacts['secondPersons'] => {
  const agreement = agreementOf(draft)
  const staffId = secondPersonIn(draft)?.staffId
  return new Map(
    agreement && staffId !== undefined ? [[draft.id, { ...agreement, staffId, until: draft.writtenAt }]] : [],
  )
}
