import type { Heard } from '@bayledger/contract/entries'
import type { DeliveryRefusal, Refusal } from '@bayledger/ledger/admit/refusal'
import type { Draft, Entry, Given } from '@bayledger/ledger/entry'
import type { Authority } from '../../../core/writer.ts'
import type { Deps } from '../../../deps.ts'
import type { MessageToKeep, SideToKeep } from '../store/projections/projection.ts'
import type { Opening } from '../store/write-entries.ts'
import type { OwnFacts } from './admit-facts.ts'

/** One draft on its way into the ledger, with what it brings along. */
export type Task = {
  readonly deps: Pick<Deps, 'pool' | 'shopId' | 'clock'>
  readonly draft: Draft
  readonly sides: readonly SideToKeep[]
  readonly messages: readonly MessageToKeep[]
  readonly given: Omit<Given, 'holds'>
  readonly plansAfterDecision: boolean
  /** What must still hold when this is written; `null`: its writer was just checked. */
  readonly authority: Authority | null
  /** What its writer had heard of the order; `null`: everything. */
  readonly heard: Heard | null
  readonly own: OwnFacts
  /** Only where the draft opens an order. */
  readonly opening: Opening | null
}

/** What became of a draft. `known`: it was in the ledger before. */
export type Appended =
  | { readonly admitted: true; readonly known: boolean; readonly entry: Entry }
  | Refusal
  | DeliveryRefusal

/** A task with who waits for it. */
export type Waiting = {
  readonly task: Task
  readonly resolve: (outcome: Appended | 'prepare-again') => void
  readonly reject: (error: unknown) => void
  /** Written with no other task of its order: one of them spoiled the statement. */
  readonly alone: boolean
  readonly tries: number
}
