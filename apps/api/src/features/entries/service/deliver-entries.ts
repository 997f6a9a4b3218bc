import type { AppendResult, Heard, SentSide } from '@bayledger/contract/entries'
import type { FieldProblem } from '@bayledger/contract/problem'
import { refuse } from '@bayledger/ledger/admit/refusal'
import { parseDraft } from '@bayledger/ledger/draft'
import type { Draft, DraftEnvelope, Entry } from '@bayledger/ledger/entry'
import { sidesNamedIn } from '@bayledger/ledger/sides'
import { english } from '@bayledger/wording/en/english'
import { problemDetail } from '@bayledger/wording/problems'
import { refusalWords } from '@bayledger/wording/refusals'
import { AppError } from '../../../core/app-error.ts'
import { boundedFields } from '../../../core/bounded-fields.ts'
import { authorityOver, type Writer } from '../../../core/writer.ts'
import type { Deps } from '../../../deps.ts'
import { refuseDelivery } from '../policy.ts'
import { listSides } from '../store/list-sides.ts'
import { findEntryById } from '../store/read-ledger.ts'
import { readStale } from '../store/read-stale.ts'
import { findRefused, keepRefused, type Reason } from '../store/refused-entries.ts'
import { appendDraft } from './append-draft.ts'
import { checkSides, type Side } from './check-sides.ts'

export type Delivered = {
  readonly entries: readonly DraftEnvelope[]
  readonly sides: readonly SentSide[]
  /** What their writer had heard of the order; `undefined`: everything. */
  readonly heard?: Heard | undefined
}

type Beside = { readonly sides: ReadonlyMap<string, Side>; readonly heard: Heard | null }

/**
 * Takes a batch in its order, each entry for itself. What one entry comes to never depends on a later one; what follows one
 * of its order that has to wait, waits too.
 */
export const deliverEntries = async (
  deps: Deps,
  writer: Writer,
  { entries, sides, heard }: Delivered,
): Promise<AppendResult[]> => {
  const sent = checkSides(sides)
  const results: AppendResult[] = []
  const waiting = new Map<string, NotYet>()
  for (const envelope of entries) {
    const before = waiting.get(envelope.orderId)
    const result: AppendResult = before
      ? { ...before, id: envelope.id }
      : await deliverOne(deps, writer, envelope, { sides: sent, heard: heard ?? null })
    if (result.result === 'not-yet') waiting.set(envelope.orderId, result)
    results.push(result)
  }
  return results
}

type NotYet = Extract<AppendResult, { result: 'not-yet' }>

const deliverOne = async (
  deps: Deps,
  writer: Writer,
  envelope: DraftEnvelope,
  beside: Beside,
): Promise<AppendResult> => {
  const parsed = parseDraft(envelope, {
    shopId: deps.shopId,
    writtenBy: { kind: 'staff', staffId: writer.staffId },
    deviceId: writer.deviceId,
  })
  if (!parsed.ok) {
    if ('newer' in parsed) {
      await refuseEndedAuthority(deps, writer)
      return {
        result: 'not-yet',
        id: envelope.id,
        words: english.doubts.tooNew,
      }
    }
    const faults = boundedFields(parsed.faults)
    const fields = faults.map(({ field }) => field)
    return keep(deps, writer, envelope, refuse('ENTRY_INVALID', { fields }), faults)
  }
  const refusal = refuseDelivery(writer, parsed.draft)
  if (refusal) return keep(deps, writer, envelope, refusal)
  try {
    return await appendParsed(deps, writer, envelope, parsed.draft, beside)
  } catch (error) {
    // Nothing of it is refused for good: it stays where it was written until the order is put right.
    if (error instanceof AppError && error.code === 'ORDER_READ_ONLY')
      return { result: 'not-yet', id: envelope.id, words: problemDetail(english.problems, error.said) }
    throw error
  }
}

const appendParsed = async (
  deps: Deps,
  writer: Writer,
  envelope: DraftEnvelope,
  draft: Draft,
  { sides: sent, heard }: Beside,
): Promise<AppendResult> => {
  const named = sidesNamedIn(draft)
  const missing = named.filter(({ digest }) => !sent.has(digest))
  if (missing.length > 0) await refuseEndedAuthority(deps, writer)
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
    authority: writer.authority,
    heard,
  })
  if (!appended.admitted) return keep(deps, writer, envelope, appended)
  if (appended.known) await refuseEndedAuthority(deps, writer)
  return takenResult(appended.known ? 'known' : 'accepted', appended.entry)
}

const takenResult = (
  result: 'accepted' | 'known',
  { id, seq, hash, receivedAt, given }: Entry,
): AppendResult => ({ result, id, seq, hash, receivedAt, given })

/** A refused entry is kept with its reason and shown, never dropped: somebody did or saw what it says. */
const keep = async (
  deps: Deps,
  writer: Writer,
  envelope: DraftEnvelope,
  reason: Reason,
  fields: FieldProblem[] = [],
): Promise<AppendResult> => {
  await refuseEndedAuthority(deps, writer)
  return keepInTray(deps, writer, envelope, reason, fields)
}

/** Puts entries in the tray that are refused whatever they say. One that is in the ledger already is known. */
export const refuseEntries = async (
  deps: Deps,
  writer: Pick<Writer, 'staffId' | 'deviceId'>,
  entries: readonly DraftEnvelope[],
  reason: Reason,
): Promise<AppendResult[]> => {
  const results: AppendResult[] = []
  for (const envelope of entries) {
    const known = await findEntryById(deps.pool, deps.shopId, envelope.id)
    results.push(known ? takenResult('known', known) : await keepInTray(deps, writer, envelope, reason))
  }
  return results
}

const keepInTray = async (
  deps: Deps,
  writer: Pick<Writer, 'staffId' | 'deviceId'>,
  envelope: DraftEnvelope,
  reason: Reason,
  fields: FieldProblem[] = [],
): Promise<AppendResult> => {
  const earlier = await findRefused(deps.pool, deps.shopId, envelope.id)
  if (earlier) return refusedResult(envelope.id, earlier, true)
  // Other content under an id that is taken: the entry that has the id stays, and this one has no id to be kept under.
  const kept = reason.code !== 'ENTRY_ID_REUSED'
  if (kept) {
    const isNew = await keepRefused(deps.pool, deps.shopId, {
      id: envelope.id,
      orderId: envelope.orderId,
      kind: envelope.kind,
      ...reason,
      body: envelope,
      receivedAt: deps.clock.now(),
      writtenBy: { kind: 'staff', staffId: writer.staffId },
      deviceId: writer.deviceId,
    })
    // The same entry came twice at once, and the other delivery was judged by more than this one knew.
    const written = isNew ? null : await findEntryById(deps.pool, deps.shopId, envelope.id)
    if (written) return takenResult('known', written)
    deps.live.wrote('tray')
  }
  return refusedResult(envelope.id, reason, kept, fields)
}

/**
 * A session may have been taken from memory, and a tablet put out since. Whoever writes is checked by the write itself;
 * whatever else is answered or kept waits for this.
 */
const refuseEndedAuthority = async (deps: Deps, { authority }: Writer): Promise<void> => {
  const asked = { entryIds: [], authorities: [authority], at: deps.clock.now() }
  const { isOver } = await readStale(deps.pool, deps.shopId, asked)
  if (isOver(authority)) throw authorityOver(authority)
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
