import { readingOrder } from '@bayledger/reckoning/wheels'
import { conflictsIn, type Told, tell } from './fold/conflicts.ts'
import { type Appliers, type Foldable, type FoldableOf, recorded, writtenOf } from './fold/foldable.ts'
import { type GrowingList, growingList, membersOf, push } from './fold/growing-list.ts'
import { isOfSecondRecord, recordsAgain } from './fold/records-again.ts'
import { evidenceOf } from './questions/evidence-of.ts'
import type { Kind } from './registry.ts'
import { isSameValue } from './same-value.ts'
import { blankOrder, type Mark, type OrderState } from './state.ts'
import { applyArrival } from './subjects/arrival/apply.ts'
import { applyClosing } from './subjects/closing/apply.ts'
import { applyComeback } from './subjects/comeback/apply.ts'
import { applyConsent } from './subjects/consent/apply.ts'
import { applyFinding } from './subjects/findings/apply.ts'
import { applyMessages } from './subjects/messages/apply.ts'
import { applyOpening } from './subjects/opening/apply.ts'
import { applyPhotos } from './subjects/photos/apply.ts'
import { applyTorque } from './subjects/torque/apply.ts'
import { applyTrouble } from './subjects/trouble/apply.ts'
import { applyWork } from './subjects/work/apply.ts'
import { upcast } from './upcast.ts'

const appliers: Appliers<Kind> = {
  ...applyOpening,
  ...applyArrival,
  ...applyFinding,
  ...applyComeback,
  ...applyConsent,
  ...applyWork,
  ...applyTorque,
  ...applyClosing,
  ...applyPhotos,
  ...applyMessages,
  ...applyTrouble,
}

/** An order folded so far, with what `advance` needs to go on from it. It and everything in it is immutable. */
export type Folded = {
  readonly state: OrderState
  /** The state without the parts that are derived from the whole ledger: what appliers read and change. */
  readonly bare: OrderState
  readonly entries: GrowingList<Foldable>
  readonly strikes: Strikes
  readonly told: Told
  /** The kind of each entry that was given a hold, by the entry's id. */
  readonly heldKinds: ReadonlyMap<string, Kind>
}

type Strikes = ReadonlyMap<string, FoldableOf<'entry.struck'>>

/**
 * The present state of an order: a pure function of its entries, in order, each once. Struck entries are left out as if
 * they had never been written; their marks stay, with the reason.
 */
export const fold = (written: readonly Foldable[]): OrderState => foldAll(written).state

/** Folds a whole ledger and keeps what `advance` needs. @throws RangeError without entries. */
export const foldAll = (written: readonly Foldable[]): Folded => {
  const entries = written.map(upcast)
  const first = entries[0]
  if (!first) throw new RangeError('an order without entries has no state; use blankOrder')
  const strikes = strikesOf(entries)
  const standing = entries.filter((entry) => !strikes.has(entry.id))
  const bare = standing.reduce(applyEntry, blankOrder(first.shopId, first.orderId))
  const told = standing.reduce<Told>(tell, new Map())
  const heldKinds = new Map(standing.filter(isHeld).map(({ id, kind }) => [id, kind]))
  const head = entries.at(-1) ?? first
  const state: OrderState = {
    ...bare,
    seq: head.seq,
    headHash: head.hash ?? bare.headHash,
    conflicts: conflictsIn(told),
    holds: holdsLeft(bare, heldKinds),
    marks: entries.map((entry) => markOf(entry, strikes.get(entry.id))),
    diagnosis: diagnosisNow(bare),
  }
  return { state, bare, entries: growingList(entries), strikes, told, heldKinds }
}

/**
 * The order with one more entry. The result equals a fold of all entries, and the cost does not grow with their number.
 * Only an entry that strikes another causes a new fold, since the struck entry may be anywhere.
 */
export const advance = (before: Folded | null, written: Foldable): Folded => {
  if (!before) return foldAll([written])
  const entry = upcast(written)
  const entries = push(before.entries, entry)
  if (entry.kind === 'entry.struck' || before.strikes.has(entry.id)) return foldAll(membersOf(entries))
  const bare = applyEntry(before.bare, entry)
  const told = tell(before.told, entry)
  const heldKinds = isHeld(entry) ? new Map(before.heldKinds).set(entry.id, entry.kind) : before.heldKinds
  const state: OrderState = {
    ...bare,
    seq: entry.seq,
    headHash: entry.hash ?? bare.headHash,
    conflicts: told === before.told ? before.state.conflicts : conflictsIn(told),
    holds: holdsLeft(bare, heldKinds),
    marks: [...before.state.marks, markOf(entry, undefined)],
    diagnosis: makesTheSameEvidence(before.bare, bare)
      ? withOutdated(bare.diagnosis, before.state.diagnosis?.outdated ?? false)
      : diagnosisNow(bare),
  }
  return { state, bare, entries, strikes: before.strikes, told, heldKinds }
}

const applyEntry = (state: OrderState, entry: Foldable): OrderState => {
  const apply = appliers[entry.kind] as (state: OrderState, entry: Foldable) => OrderState
  const holds = (entry.given.holds ?? []).map((hold) => recorded(hold, entry))
  const held = holds.length > 0 ? { ...state, holds: [...state.holds, ...holds] } : state
  return recordsAgain(held, entry) ? held : apply(held, entry)
}

const isHeld = ({ given }: Foldable): boolean => (given.holds ?? []).length > 0

/**
 * A doubt about a torque round ends when a later round replaces it or the wheel comes off again. A doubt about a step that
 * was recorded twice ends when the other record is withdrawn. Findings that came late are outdated, which says it all.
 */
const holdsLeft = (
  { holds, work, closed }: OrderState,
  heldKinds: ReadonlyMap<string, Kind>,
): OrderState['holds'] =>
  holds.length === 0
    ? holds
    : holds.filter((hold) => {
        const { written } = hold
        const kind = heldKinds.get(written.entryId)
        if (kind === 'diagnosis.issued') return false
        if (isOfSecondRecord(hold))
          return Object.values(closed).every((step) => step.written.entryId !== written.entryId)
        if (kind !== 'studs.torqued' && kind !== 'torque.checked') return true
        return Object.values(work).some(({ rounds, checked }) =>
          [...Object.values(rounds), checked].some((seal) => seal?.written.entryId === written.entryId),
        )
      })

const strikesOf = (entries: readonly Foldable[]): Strikes =>
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
const diagnosisNow = (bare: OrderState): OrderState['diagnosis'] => {
  if (!bare.diagnosis) return null
  const now = evidenceOf(bare, bare.diagnosis.evidence.history ?? null)
  return withOutdated(bare.diagnosis, !isSameValue(now, bare.diagnosis.evidence))
}

const withOutdated = (diagnosis: OrderState['diagnosis'], outdated: boolean): OrderState['diagnosis'] =>
  diagnosis && outdated ? { ...diagnosis, outdated } : diagnosis

/** Everything that `evidenceOf` reads, and the evidence that it is compared with. */
const makesTheSameEvidence = (before: OrderState, now: OrderState): boolean =>
  now.arrival === before.arrival &&
  now.sheet === before.sheet &&
  now.complaint === before.complaint &&
  now.surroundings === before.surroundings &&
  now.skippedChecks === before.skippedChecks &&
  now.figures === before.figures &&
  now.troubles === before.troubles &&
  readingOrder.every((wheel) => now.work[wheel]?.inside === before.work[wheel]?.inside) &&
  now.diagnosis?.evidence === before.diagnosis?.evidence
