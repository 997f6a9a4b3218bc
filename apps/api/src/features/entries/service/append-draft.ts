import type { Heard } from '@bayledger/contract/entries'
import type { Draft, Given } from '@bayledger/ledger/entry'
import type { Authority } from '../../../core/writer.ts'
import type { Deps } from '../../../deps.ts'
import type { MessageToKeep, SideToKeep } from '../store/projections/projection.ts'
import { peekOrderNumber } from '../store/read-facts.ts'
import type { Opening } from '../store/write-entries.ts'
import type { Appended, Task } from './append-task.ts'
import { stateOfKept } from './kept-orders.ts'
import { loadOwnFacts } from './load-facts.ts'
import { moneyNamedIn } from './money-named-in.ts'
import { memoryOf } from './process-memory.ts'
import { refuseDoubted } from './read-only-orders.ts'

export type { Appended }

export type AppendOptions = {
  readonly sides: readonly SideToKeep[]
  /** Messages to the customer that this entry causes, beside those that every such entry does. */
  readonly messages?: readonly MessageToKeep[]
  readonly given?: Omit<Given, 'holds'>
  /** Off where the plan comes as an entry of its own, as in a ledger that is loaded whole. */
  readonly plansAfterDecision?: boolean
  /** What the writer writes under, where it must hold when the entry is written. */
  readonly authority?: Authority
  /** What its writer had heard of the order; left out or `null`: everything. */
  readonly heard?: Heard | null
}

/** More rounds than this for one entry would be a fault of ours, not a busy day. */
const mostTries = 60

/**
 * Appends one entry, with what the server writes with it: admitted on what this process keeps in memory, and written
 * only where that is still true. In the usual case the write is the only round trip to the database.
 */
export const appendDraft = (deps: Deps, draft: Draft, options: AppendOptions): Promise<Appended> =>
  draft.kind === 'order.opened'
    ? memoryOf(deps.pool).openings.inTurn(deps.shopId, () => appendNow(deps, draft, options))
    : appendNow(deps, draft, options)

const appendNow = async (deps: Deps, draft: Draft, options: AppendOptions): Promise<Appended> => {
  const { writer } = memoryOf(deps.pool)
  for (let tries = 0; tries < mostTries; tries += 1) {
    const appended = await writer.append(await prepare(deps, draft, options, tries === 0))
    if (appended === 'prepare-again') continue
    if (appended.admitted && !appended.known)
      deps.live.wrote([{ orderId: draft.orderId, seq: appended.entry.seq }])
    return appended
  }
  throw new Error(`order ${draft.orderId} changed ${mostTries} times in a row`)
}

/** One draft of several, with its own moment. */
export type ToAppend = { readonly deps: Deps; readonly draft: Draft; readonly options: AppendOptions }

/**
 * Appends drafts of one order together, so that they share a write: what is loaded whole is loaded by a few statements. Each
 * must be admitted on what the order was before the first, beside the drafts before it. Where the order has changed
 * meanwhile, they go one after the other.
 */
export const appendTogether = async (drafts: readonly ToAppend[]): Promise<Appended[]> => {
  const tasks: Task[] = []
  for (const { deps, draft, options } of drafts) tasks.push(await prepare(deps, draft, options, true))
  const done = await Promise.all(tasks.map((task) => memoryOf(task.deps.pool).writer.append(task)))
  if (done.every((one): one is Appended => one !== 'prepare-again')) return done
  const inTurn: Appended[] = []
  for (const { deps, draft, options } of drafts) inTurn.push(await appendNow(deps, draft, options))
  return inTurn
}

/** Brings into memory what admitting this draft needs. A first try takes what is there. */
const prepare = async (
  deps: Deps,
  draft: Draft,
  { sides, messages = [], given = {}, plansAfterDecision = true, authority, heard }: AppendOptions,
  isFirst: boolean,
): Promise<Task> => {
  const { orders, facts } = memoryOf(deps.pool)
  const { shopId } = deps
  const kept = isFirst ? orders.peek(shopId, draft.orderId) : undefined
  const order = kept && !kept.doubt ? kept : await orders.refresh(shopId, draft.orderId)
  refuseDoubted(order)
  if (!facts.peek(shopId)) await facts.refresh(shopId)
  return {
    deps,
    draft,
    sides,
    messages,
    given,
    plansAfterDecision,
    authority: authority ?? null,
    heard: heard ?? null,
    own: await loadOwnFacts(deps, stateOfKept(order), draft, await moneyNamedIn(deps, draft, sides)),
    opening: draft.kind === 'order.opened' ? await openingOf(deps, given) : null,
  }
}

const openingOf = async (deps: Deps, given: Omit<Given, 'holds'>): Promise<Opening> => {
  if (given.orderNumber !== undefined) return { number: given.orderNumber, takes: null }
  const takes = await peekOrderNumber(deps.pool, deps.shopId)
  return { number: `${takes.series}-${takes.next}`, takes }
}
