import type { AppendResult, PersonalText } from '@bayledger/contract/entries'
import type { FieldProblem } from '@bayledger/contract/problem'
import { parseDraft } from '@bayledger/ledger/draft'
import type { Draft, DraftEnvelope } from '@bayledger/ledger/entry'
import type { StaffActor } from '../../../core/actor.ts'
import type { Deps } from '../../../deps.ts'
import { refuseDelivery } from '../policy.ts'
import { listStoredDigests } from '../store/personal-texts.ts'
import { findEntryById } from '../store/read-ledger.ts'
import { findRefused, keepRefused } from '../store/refused-entries.ts'
import type { Words } from '../store/write-entries.ts'
import { appendDraft } from './append-draft.ts'
import { checkWords } from './check-words.ts'
import { findPersonalDigests } from './find-personal-digests.ts'

/** Takes a batch in its order, one transaction an entry. What one entry comes to never depends on a later one. */
export const deliverEntries = async (
  deps: Deps,
  actor: StaffActor,
  { entries, texts }: { readonly entries: readonly DraftEnvelope[]; readonly texts: readonly PersonalText[] },
): Promise<AppendResult[]> => {
  const words = checkWords(texts)
  const results: AppendResult[] = []
  for (const envelope of entries) results.push(await deliverOne(deps, actor, envelope, words))
  return results
}

const deliverOne = async (
  deps: Deps,
  actor: StaffActor,
  envelope: DraftEnvelope,
  words: ReadonlyMap<string, Words>,
): Promise<AppendResult> => {
  const earlier = await findRefused(deps.pool, deps.shopId, envelope.id)
  if (earlier) return refusedResult(envelope.id, earlier, true)
  const parsed = parseDraft(envelope, {
    shopId: deps.shopId,
    writtenBy: { kind: 'staff', staffId: actor.staffId },
    deviceId: actor.deviceId,
  })
  if (!parsed.ok) {
    if ('newer' in parsed)
      return {
        result: 'not-yet',
        id: envelope.id,
        words:
          'This was written by a newer version than the server runs. It stays here until the server is updated.',
      }
    return keep(deps, actor, envelope, {
      code: 'ENTRY_INVALID',
      words: `Not taken: ${parsed.faults.map(({ field, allowed }) => `${field} must be ${allowed}`).join('; ')}. Write it again.`,
      fields: [...parsed.faults],
    })
  }
  const refusal = refuseDelivery(actor, parsed.draft)
  if (refusal) return keep(deps, actor, envelope, refusal)
  return appendParsed(deps, actor, envelope, parsed.draft, words)
}

const appendParsed = async (
  deps: Deps,
  actor: StaffActor,
  envelope: DraftEnvelope,
  draft: Draft,
  words: ReadonlyMap<string, Words>,
): Promise<AppendResult> => {
  const named = findPersonalDigests(draft)
  const missing = named.filter((digest) => !words.has(digest))
  if (missing.length > 0 && !(await findEntryById(deps.pool, deps.shopId, draft.id))) {
    const stored = await listStoredDigests(deps.pool, deps.shopId, missing)
    if (missing.some((digest) => !stored.has(digest)))
      return refusedResult(
        draft.id,
        {
          code: 'TEXT_MISSING',
          words: 'The words that belong to this entry did not come with it. Send both together.',
        },
        false,
      )
  }
  const appended = await appendDraft(deps, draft, {
    words: named.flatMap((digest) => words.get(digest) ?? []),
  })
  if (!appended.admitted) return keep(deps, actor, envelope, appended)
  const { seq, hash, receivedAt, given } = appended.entry
  return { result: appended.known ? 'known' : 'accepted', id: draft.id, seq, hash, receivedAt, given }
}

type Reason = { readonly code: string; readonly words: string; readonly fields?: FieldProblem[] }

/** A refused entry is kept with its reason and shown, never dropped: somebody did or saw what it says. */
const keep = async (
  deps: Deps,
  actor: StaffActor,
  envelope: DraftEnvelope,
  reason: Reason,
): Promise<AppendResult> => {
  // Other content under an id that is taken: the entry that has the id stands, and this one has none to be kept under.
  const kept = reason.code !== 'ENTRY_ID_REUSED'
  if (kept) {
    await keepRefused(deps.pool, deps.shopId, {
      id: envelope.id,
      orderId: envelope.orderId,
      kind: envelope.kind,
      code: reason.code,
      words: reason.words,
      body: envelope,
      receivedAt: deps.clock.now(),
      writtenBy: { kind: 'staff', staffId: actor.staffId },
      deviceId: actor.deviceId,
    })
    deps.live.wrote()
  }
  return refusedResult(envelope.id, reason, kept)
}

const refusedResult = (id: string, { code, words, fields = [] }: Reason, kept: boolean): AppendResult => ({
  result: 'refused',
  id,
  code,
  words,
  kept,
  fields,
})
