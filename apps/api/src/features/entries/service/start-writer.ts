import type { Pool } from 'pg'
import { authorityOver } from '../../../core/writer.ts'
import { projectHead } from '../store/projections/head.ts'
import { readStale } from '../store/read-stale.ts'
import { type GuardedWrite, openOrder, orderKey, writeEntries } from '../store/write-entries.ts'
import { idReused } from './admit-task.ts'
import type { Appended, Task, Waiting } from './append-task.ts'
import { type Failure, failureOf } from './failed-write.ts'
import { type Group, gatherGroups } from './gather-groups.ts'
import type { KeptFacts } from './kept-facts.ts'
import { type KeptOrders, seqOf, stateOfKept } from './kept-orders.ts'

export type Writer = {
  /** What became of a task, once that is on the disk; `prepare-again` where what it was prepared with has changed. */
  readonly append: (task: Task) => Promise<Appended | 'prepare-again'>
}

/** How the writer waits. A simulation brings turns of its own. */
export type Turns = {
  /** Does the work after everything that has already arrived was read. */
  readonly next: (work: () => void) => void
  readonly after: (milliseconds: number, work: () => void) => void
}

type Parts = {
  readonly pool: Pool
  readonly orders: KeptOrders
  readonly facts: KeptFacts
  readonly turns: Turns
}

/** As many entries as one statement writes at most; what is left goes with the next. */
const mostAtOnce = 256

/** While one waits for the disk or for a locked order, the other goes on; more only make each statement smaller. */
const mostInFlight = 2

/** Milliseconds after which a few that wait go beside a write in flight, however many that one took. */
const patienceMs = 5

/** More rounds than this for one entry would be a fault of ours, not a busy day. */
const mostTries = 60

/**
 * The only writer of this process. Two writes at most are in flight, never two of one order; whatever arrives meanwhile
 * is admitted in its order against the orders in memory and written together by the next one, so that all who wait share
 * one flush to disk. Memory may be behind the database: nothing is written unless it was right, and nothing is refused for good
 * before that was looked up.
 */
export const startWriter = (parts: Parts): Writer => {
  let queue: Waiting[] = []
  let inFlight = 0
  /** The orders of the writes in flight: what else comes for one of them waits for that write. */
  const busy = new Set<string>()
  /** How many tasks the writes in flight took. */
  let taken = 0
  let isWoken = false
  let isPatient = true

  const wake = (): void => {
    if (isWoken) return
    isWoken = true
    // What came at the same moment goes together.
    parts.turns.next(() => {
      isWoken = false
      // A second write goes with as many tasks as the first or more: a statement of its own costs as much as several tasks.
      while (inFlight < mostInFlight && queue.length >= taken) if (!begin()) return
      if (queue.length > 0 && inFlight < mostInFlight) waitNoLonger()
    })
  }

  const waitNoLonger = (): void => {
    if (!isPatient) return
    isPatient = false
    parts.turns.after(patienceMs, () => {
      isPatient = true
      if (inFlight < mostInFlight) begin()
    })
  }

  /** Starts a write with what waits, if any of it can go now. */
  const begin = (): boolean => {
    const batch = take()
    if (batch.length > 0) void write(batch)
    return batch.length > 0
  }

  const take = (): readonly Waiting[] => {
    const batch: Waiting[] = []
    const left: Waiting[] = []
    for (const waiting of queue)
      (batch.length < mostAtOnce && !busy.has(keyOf(waiting)) ? batch : left).push(waiting)
    queue = left
    return batch
  }

  const write = async (batch: readonly Waiting[]): Promise<void> => {
    const keys = new Set(batch.map(keyOf))
    inFlight += 1
    taken += batch.length
    for (const key of keys) busy.add(key)
    const again = await writeBatch(parts, batch)
    for (const key of keys) busy.delete(key)
    inFlight -= 1
    taken -= batch.length
    queue = [...again, ...queue]
    wake()
  }

  return {
    append: (task) =>
      new Promise((resolve, reject) => {
        queue.push({ task, resolve, reject, alone: false, tries: 0 })
        wake()
      }),
  }
}

const keyOf = ({ task }: Waiting): string => orderKey(task.deps.shopId, task.draft.orderId)

/** Writes what can be written of a batch and settles it; gives back, in order, what has to be admitted again. */
const writeBatch = async (parts: Parts, batch: readonly Waiting[]): Promise<Waiting[]> => {
  try {
    const { groups, deferred } = gatherGroups(parts, batch)
    const writing = groups.filter(({ written, opening }) => written.length > 0 && !opening)
    const opening = groups.filter((group) => group.opening)
    const judged = groups.filter(({ written }) => written.length === 0)
    const again = [
      ...(await writeTogether(parts, writing)),
      ...(await inTurn(opening, (group) => writeOpening(parts, group))),
      ...(await Promise.all(judged.map((group) => lookAgain(parts, group)))).flat(),
    ]
    return [...again, ...deferred]
  } catch (error) {
    for (const { reject } of batch) reject(error)
    return []
  }
}

const writeTogether = async (parts: Parts, groups: readonly Group[]): Promise<Waiting[]> => {
  if (groups.length === 0) return []
  try {
    const done = await writeEntries(parts.pool, groups.map(writeOf))
    return await inTurn(groups, async (group) => {
      if (!done.has(orderKey(group.order.shopId, group.order.orderId))) return lookAgain(parts, group)
      settle(parts, group)
      return []
    })
  } catch (error) {
    const failure = failureOf(error)
    if (failure.kind !== 'everything' && groups.length > 1)
      return inTurn(groups, (group) => writeTogether(parts, [group]))
    return inTurn(groups, (group) => settleFailure(parts, group, failure))
  }
}

const writeOpening = async (parts: Parts, group: Group): Promise<Waiting[]> => {
  try {
    if (group.opening && (await openOrder(parts.pool, writeOf(group), group.opening))) {
      settle(parts, group)
      return []
    }
    return await lookAgain(parts, group)
  } catch (error) {
    return settleFailure(parts, group, failureOf(error))
  }
}

const writeOf = ({
  order,
  base,
  written,
  sides,
  messages,
  authorities,
  factsVersion,
  entryById,
}: Group): GuardedWrite => ({
  shopId: order.shopId,
  orderId: order.orderId,
  after: seqOf(base),
  entries: written,
  head: projectHead(stateOfKept(order), order.last?.receivedAt ?? ''),
  entryById,
  sides,
  messages,
  authorities,
  factsVersion,
})

const settle = ({ orders }: Parts, { order, base, written, members }: Group): void => {
  orders.absorb(order.shopId, order.orderId, seqOf(base), written)
  for (const { waiting, outcome } of members) waiting.resolve(outcome)
}

/**
 * Reads again what an order was judged on. Where it is as it was, its refusals are final; where it has changed, its
 * tasks are admitted again. A writer whose session is over, or whose tablet was put out, is turned away.
 */
const lookAgain = async (parts: Parts, group: Group): Promise<Waiting[]> => {
  const { shopId, orderId } = group.order
  const tasks = group.members.map(({ waiting }) => waiting.task)
  const [order, shop, stale] = await Promise.all([
    parts.orders.refresh(shopId, orderId),
    parts.facts.refresh(shopId),
    readStale(parts.pool, shopId, {
      entryIds: tasks.map(({ draft }) => draft.id),
      authorities: tasks.flatMap(({ authority }) => authority ?? []),
      at: tasks[0]?.deps.clock.now() ?? new Date(),
    }),
  ])
  const unchanged =
    order.doubt === null && seqOf(order) === seqOf(group.base) && shop.version === group.factsVersion
  return group.members.flatMap(({ waiting, outcome }) => {
    const { draft, authority, opening } = waiting.task
    const takenBy = stale.takenIds.get(draft.id)
    if (authority !== null && stale.isOver(authority)) waiting.reject(authorityOver(authority))
    else if (stale.refusedIds.has(draft.id) || (takenBy !== undefined && takenBy !== orderId))
      waiting.resolve(idReused)
    else if (unchanged && group.written.length === 0) waiting.resolve(outcome)
    else if (opening) waiting.resolve('prepare-again')
    else return again(waiting)
    return []
  })
}

const settleFailure = async (parts: Parts, group: Group, failure: Failure): Promise<Waiting[]> => {
  if (failure.kind === 'stale') return lookAgain(parts, group)
  const { members } = group
  // One of several spoils the statement: each goes alone, and the spoiling one fails alone.
  if (failure.kind !== 'everything' && members.length > 1)
    return members.flatMap(({ waiting }) => again({ ...waiting, alone: true }))
  for (const { waiting } of members)
    if (failure.kind === 'refused') waiting.resolve(failure.refusal)
    else waiting.reject(failure.error)
  return []
}

const again = (waiting: Waiting): Waiting[] => {
  if (waiting.tries < mostTries) return [{ ...waiting, tries: waiting.tries + 1 }]
  waiting.reject(new Error(`order ${waiting.task.draft.orderId} changed ${mostTries} times in a row`))
  return []
}

const inTurn = async (
  groups: readonly Group[],
  work: (group: Group) => Promise<Waiting[]>,
): Promise<Waiting[]> => {
  const results: Waiting[] = []
  for (const group of groups) results.push(...(await work(group)))
  return results
}
