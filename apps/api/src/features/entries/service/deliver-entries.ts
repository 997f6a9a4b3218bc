import type { AppendResult, SentSide } from '@bayledger/contract/entries'
import type { FieldProblem } from '@bayledger/contract/problem'
import { refuse } from '@bayledger/ledger/admit/refusal'
import { parseDraft } from '@bayledger/ledger/draft'
import type { Draft, DraftEnvelope } from '@bayledger/ledger/entry'
import { sidesNamedIn } from '@bayledger/ledger/sides'
import { english } from '@bayledger/wording/en/english'
import { problemDetail } from '@bayledger/wording/problems'
import { refusalWords } from '@bayledger/wording/refusals'
import type { StaffActor } from '../../../core/actor.ts'
import { AppError } from '../../../core/app-error.ts'
import type { Deps } from '../../../deps.ts'
import { refuseDelivery } from '../policy.ts'
import { listSides } from '../store/list-sides.ts'
import { findEntryById } from '../store/read-ledger.ts'
import { readStale } from '../store/read-stale.ts'
import { findRefused, keepRefused, type Reason } from '../store/refused-entries.ts'
import { appendDraft } from './append-draft.ts'
import { checkSides, type Side } from './check-sides.ts'

/** Takes a batch in its order, each entry for itself. What one entry comes to never depends on a later one. */
export const deliverEntries = async (
  deps: Deps,
  actor: StaffActor,
  { entries, sides }: { readonly entries: readonly DraftEnvelope[]; readonly sides: readonly SentSide[] },
): Promise<AppendResult[]> => {
  const sent = checkSides(sides)
  const results: AppendResult[] = []
  for (const envelope of entries) results.push(await deliverOne(deps, actor, envelope, sent))
  return results
}

const deliverOne = async (
  deps: Deps,
  actor: StaffActor,
  envelope: DraftEnvelope,
  sent: ReadonlyMap<string, Side>,
): Promise<AppendResult> => {
  const parsed = parseDraft(envelope, {
    shopId: deps.shopId,
    writtenBy: { kind: 'staff', staffId: actor.staffId },
    deviceId: actor.deviceId,
  })
  if (!parsed.ok) {
    if ('newer' in parsed) {
      await refuseEndedSession(deps, actor)
      return {
        result: 'not-yet',
        id: envelope.id,
        words: english.doubts.tooNew,
      }
    }
    const fields = parsed.faults.map(({ field }) => field)
    return keep(deps, actor, envelope, refuse('ENTRY_INVALID', { fields }), [...parsed.faults])
  }
  const refusal = refuseDelivery(actor, parsed.draft)
  if (refusal) return keep(deps, actor, envelope, refusal)
  try {
    return await appendParsed(deps, actor, envelope, parsed.draft, sent)
  } catch (error) {
    // Nothing of it is refused for good: it stays where it was written until the order is put right.
    if (error instanceof AppError && error.code === 'ORDER_READ_ONLY')
      return { result: 'not-yet', id: envelope.id, words: problemDetail(english.problems, error.said) }
    throw error
  }
}

const appendParsed = async (
  deps: Deps,
  actor: StaffActor,
  envelope: DraftEnvelope,
  draft: Draft,
  sent: ReadonlyMap<string, Side>,
): Promise<AppendResult> => {
  const named = sidesNamedIn(draft)
  const missing = named.filter(({ digest }) => !sent.has(digest))
  if (missing.length > 0) await refuseEndedSession(deps, actor)
  if (missing.length > 0 && !(await findEntryById(deps.pool, deps.shopId, draft.id))) {
    const kept = new Set((await listSides(deps.pool, deps.shopId, missing)).map(({ digest }) => digest))
    if (missing.some(({ digest }) => !kept.has(digest)))
      return refusedResult(draft.id, refuse('SIDE_MISSING', {}), false)
  }
  const appended = await appendDraft(deps, draft, {
    sides: named.flatMap(({ side, digest }) => {
      const came = sent.get(digest)
      return came ? [{ ...came, side }] : []
    }),
    sessionId: actor.sessionId,
  })
  if (!appended.admitted) return keep(deps, actor, envelope, appended)
  if (appended.known) await refuseEndedSession(deps, actor)
  const { seq, hash, receivedAt, given } = appended.entry
  return { result: appended.known ? 'known' : 'accepted', id: draft.id, seq, hash, receivedAt, given }
}

/** A refused entry is kept with its reason and shown, never dropped: somebody did or saw what it says. */
const keep = async (
  deps: Deps,
  actor: StaffActor,
  envelope: DraftEnvelope,
  reason: Reason,
  fields: FieldProblem[] = [],
): Promise<AppendResult> => {
  await refuseEndedSession(deps, actor)
  const earlier = await findRefused(deps.pool, deps.shopId, envelope.id)
  if (earlier) return refusedResult(envelope.id, earlier, true)
  // Other content under an id that is taken: the entry that has the id stays, and this one has no id to be kept under.
  const kept = reason.code !== 'ENTRY_ID_REUSED'
  if (kept) {
    await keepRefused(deps.pool, deps.shopId, {
      id: envelope.id,
      orderId: envelope.orderId,
      kind: envelope.kind,
      ...reason,
      body: envelope,
      receivedAt: deps.clock.now(),
      writtenBy: { kind: 'staff', staffId: actor.staffId },
      deviceId: actor.deviceId,
    })
    deps.live.wrote('tray')
  }
  return refusedResult(envelope.id, reason, kept, fields)
}

/**
 * The session may have been taken from memory. Whoever writes is checked by the write itself; whatever else is answered
 * or kept waits for this.
 */
const refuseEndedSession = async (deps: Deps, { sessionId }: StaffActor): Promise<void> => {
  const asked = { entryIds: [], sessionIds: [sessionId], at: deps.clock.now() }
  const { endedSessions } = await readStale(deps.pool, deps.shopId, asked)
  if (endedSessions.size > 0) throw new AppError({ code: 'SESSION_EXPIRED' })
}

const refusedResult = (
  id: string,
  reason: Reason,
  kept: boolean,
  fields: FieldProblem[] = [],
): AppendResult => ({
  result: 'refused',
  id,
  code: reason.code,
  values: reason.values,
  words: refusalWords(english.refusals, reason),
  kept,
  fields,
})
