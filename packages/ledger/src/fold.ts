import { conflictsIn } from './fold/conflicts.ts'
import { type Appliers, type Foldable, type FoldableOf, recorded, writtenOf } from './fold/foldable.ts'
import { canonicalText } from './hash-chain.ts'
import { evidenceOf } from './questions/evidence-of.ts'
import type { Kind } from './registry.ts'
import { blankOrder, type Mark, type OrderState } from './state.ts'
import { applyArrival } from './subjects/arrival/apply.ts'
import { applyClosing } from './subjects/closing/apply.ts'
import { applyConsent } from './subjects/consent/apply.ts'
import { applyFinding } from './subjects/findings/apply.ts'
import { applyMessages } from './subjects/messages/apply.ts'
import { applyOpening } from './subjects/opening/apply.ts'
import { applyPhotos } from './subjects/photos/apply.ts'
import { applyTorque } from './subjects/torque/apply.ts'
import { applyWork } from './subjects/work/apply.ts'
import { upcast } from './upcast.ts'

const appliers: Appliers<Kind> = {
  ...applyOpening,
  ...applyArrival,
  ...applyFinding,
  ...applyConsent,
  ...applyWork,
  ...applyTorque,
  ...applyClosing,
  ...applyPhotos,
  ...applyMessages,
}

/**
 * The present state of an order: a pure function of its entries, in their order, each once. Struck entries are
 * left out as if they had never been written; their marks stay, with the reason.
 */
export const fold = (written: readonly Foldable[]): OrderState => {
  const entries = written.map(upcast)
  const first = entries[0]
  if (!first) throw new RangeError('an order without entries has no state; use blankOrder')
  const strikes = strikesOf(entries)
  const standing = entries.filter((entry) => !strikes.has(entry.id))
  const folded = standing.reduce(applyEntry, blankOrder(first.shopId, first.orderId))
  const head = entries.at(-1) ?? first
  return markOutdated({
    ...folded,
    seq: head.seq,
    headHash: head.hash ?? folded.headHash,
    conflicts: conflictsIn(standing),
    holds: folded.holds.filter((hold) => concernsWhatStands(hold, folded, standing)),
    marks: entries.map((entry) => markOf(entry, strikes.get(entry.id))),
  })
}

const applyEntry = (state: OrderState, entry: Foldable): OrderState => {
  const apply = appliers[entry.kind] as (state: OrderState, entry: Foldable) => OrderState
  const holds = (entry.given.holds ?? []).map((hold) => recorded(hold, entry))
  return apply(holds.length > 0 ? { ...state, holds: [...state.holds, ...holds] } : state, entry)
}

/** A doubt about a torque round ends when a later round has overtaken it or the wheel came off again. */
const concernsWhatStands = (
  { written }: OrderState['holds'][number],
  { work }: OrderState,
  standing: readonly Foldable[],
): boolean => {
  const kind = standing.find(({ id }) => id === written.entryId)?.kind
  if (kind !== 'studs.torqued' && kind !== 'torque.checked') return true
  return Object.values(work).some(({ rounds, checked }) =>
    [...Object.values(rounds), checked].some((seal) => seal?.written.entryId === written.entryId),
  )
}

const strikesOf = (entries: readonly Foldable[]): Map<string, FoldableOf<'entry.struck'>> =>
  new Map(entries.flatMap((entry) => (entry.kind === 'entry.struck' ? [[entry.payload.entryId, entry]] : [])))

const markOf = (entry: Foldable, strike: FoldableOf<'entry.struck'> | undefined): Mark => ({
  ...writtenOf(entry),
  kind: entry.kind,
  receivedAt: entry.receivedAt,
  struck: strike
    ? { ...writtenOf(strike), reason: strike.payload.reason, words: strike.payload.words }
    : null,
})

/** A diagnosis is outdated when the arrival facts no longer make the evidence that it was issued on. */
const markOutdated = (state: OrderState): OrderState => {
  if (!state.diagnosis) return state
  const now = evidenceOf(state, state.diagnosis.evidence.history ?? null)
  const outdated = canonicalText(now) !== canonicalText(state.diagnosis.evidence)
  return outdated ? { ...state, diagnosis: { ...state.diagnosis, outdated } } : state
}
