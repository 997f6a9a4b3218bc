import { canonicalText } from '@bayledger/ledger/digests'
import { type Entry, noHash } from '@bayledger/ledger/entry'
import { fold } from '@bayledger/ledger/fold'
import { hashEntry } from '@bayledger/ledger/hash-chain'
import type { OrderState } from '@bayledger/ledger/state'
import { isHeardLate, looseWheels, movesOnTheRoad } from './bare-record.ts'
import type { Accuse } from './violation.ts'
import type { Witness } from './witness.ts'

/** Reads every entry that is written, as an auditor would who trusts nobody, and folds it afresh. */
export type RecordWatch = {
  readonly written: (orderId: string, entries: readonly Entry[]) => void
  /** Holds a state against a fresh fold of as many entries. */
  readonly compare: (who: string, orderId: string, state: OrderState) => void
  /** The name of an order: "order 3". */
  readonly nameOf: (orderId: string) => string
  readonly entryCount: () => number
  /** Holds the newest entry that somebody has heard against the ledger. */
  readonly agree: (
    who: string,
    orderId: string,
    head: { readonly seq: number; readonly hash: string },
  ) => void
}

/** A state, and the same as text. */
type FreshFold = { readonly state: OrderState; readonly text: string }

export const newRecordWatch = (
  witness: Witness,
  isRefused: (entryId: string) => boolean,
  accuse: Accuse,
  begun: readonly (readonly Entry[])[] = [],
): RecordWatch => {
  const ledgers = new Map(begun.map((entries) => [entries[0]?.orderId ?? '', [...entries]]))
  const seen = new Set(begun.flat().map(({ id }) => id))
  const folded = new Map<string, FreshFold>()
  const names = new Map<string, string>()

  const nameOf = (orderId: string): string => {
    const name = names.get(orderId) ?? `order ${names.size + 1}`
    names.set(orderId, name)
    return name
  }

  const readEntry = (ledger: readonly Entry[], entry: Entry): void => {
    const { hash, ...rest } = entry
    const last = ledger.at(-1)
    const name = `entry ${entry.seq} of ${nameOf(entry.orderId)}`
    if (seen.has(entry.id)) accuse('twice', `${witness.saysOf(entry.id)} is in the ledger twice`)
    if (entry.writtenBy.kind !== 'system' && !witness.wasTapped(entry.id))
      accuse('twice', `${name} (${entry.kind}) is in the ledger and nobody tapped it`)
    if (isRefused(entry.id)) accuse('twice', `${witness.saysOf(entry.id)} is in the ledger and in the tray`)
    if (entry.seq !== ledger.length + 1 || entry.previousHash !== (last?.hash ?? noHash))
      accuse('diverged', `${name} does not follow the entry before it`)
    if (hashEntry(rest) !== hash) accuse('diverged', `${name} has another hash than its content`)
    const loose = movesOnTheRoad(entry) && !isHeardLate(entry) ? looseWheels(ledger) : []
    if (loose.length > 0)
      accuse('gates', `${name} (${entry.kind}) was taken with loose wheels: ${loose.join(', ')}`)
  }

  const stateAt = (orderId: string, seq: number): FreshFold => {
    const key = `${orderId}/${seq}`
    const known = folded.get(key)
    if (known) return known
    const state = fold((ledgers.get(orderId) ?? []).slice(0, seq))
    const fresh = { state, text: JSON.stringify(state) }
    if (folded.size > 200) folded.clear()
    folded.set(key, fresh)
    return fresh
  }

  return {
    written: (orderId, entries) => {
      const ledger = ledgers.get(orderId) ?? []
      ledgers.set(orderId, ledger)
      nameOf(orderId)
      for (const entry of entries) {
        readEntry(ledger, entry)
        ledger.push(entry)
        seen.add(entry.id)
      }
    },
    compare: (who, orderId, state) => {
      if (state.seq > (ledgers.get(orderId)?.length ?? 0)) {
        accuse('diverged', `${who} has more entries of ${nameOf(orderId)} than the ledger`)
        return
      }
      const fresh = stateAt(orderId, state.seq)
      if (fresh.text === JSON.stringify(state)) return
      if (canonicalText(fresh.state) !== canonicalText(state))
        accuse(
          'diverged',
          `${who} folds ${nameOf(orderId)} up to entry ${state.seq} to another state: ${differing(fresh.state, state)}`,
        )
    },
    nameOf,
    entryCount: () => seen.size,
    agree: (who, orderId, { seq, hash }) => {
      if (ledgers.get(orderId)?.[seq - 1]?.hash !== hash)
        accuse('diverged', `${who} has another entry ${seq} of ${nameOf(orderId)} than the ledger`)
    },
  }
}

const differing = (one: OrderState, other: OrderState): string =>
  (Object.keys(one) as (keyof OrderState)[])
    .filter((key) => JSON.stringify(one[key]) !== JSON.stringify(other[key]))
    .join(', ')
