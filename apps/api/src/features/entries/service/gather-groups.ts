import type { Entry } from '@bayledger/ledger/entry'
import type { Authority } from '../../../core/writer.ts'
import type { MessageToKeep, SideToKeep } from '../store/projections/projection.ts'
import { type Opening, orderKey } from '../store/write-entries.ts'
import { admitTask, idReused, isSameContent } from './admit-task.ts'
import type { Appended, Task, Waiting } from './append-task.ts'
import type { KeptFacts } from './kept-facts.ts'
import type { KeptOrder, KeptOrders } from './kept-orders.ts'

/** What one order gains in one write: all of it or nothing. */
export type Group = {
  /** As it was admitted against. */
  readonly base: KeptOrder
  /** With everything that was admitted. */
  order: KeptOrder
  readonly written: Entry[]
  readonly sides: SideToKeep[]
  readonly messages: MessageToKeep[]
  readonly authorities: Authority[]
  readonly factsVersion: number
  opening: Opening | null
  /** Takes no further task: an order that is opened, or a task that goes alone. */
  closed: boolean
  readonly members: { readonly waiting: Waiting; readonly outcome: Appended }[]
  readonly entryById: (id: string) => Entry | undefined
}

type Memory = { readonly orders: KeptOrders; readonly facts: KeptFacts }

/**
 * Admits tasks in their order, each against what the ones before it have made of its order. Settles those that need
 * no write; gives back the groups to write and the tasks that must wait for the next write.
 */
export const gatherGroups = (
  memory: Memory,
  batch: readonly Waiting[],
): { readonly groups: readonly Group[]; readonly deferred: readonly Waiting[] } => {
  const groups = new Map<string, Group>()
  const deferred: Waiting[] = []
  for (const waiting of batch) {
    const { draft, deps } = waiting.task
    const key = orderKey(deps.shopId, draft.orderId)
    const group = groups.get(key) ?? newGroup(memory, deps.shopId, draft.orderId)
    if (group === null) waiting.resolve('prepare-again')
    else if (group.closed || (waiting.alone && group.members.length > 0)) deferred.push(waiting)
    else {
      place(memory, group, waiting)
      if (group.members.length > 0) groups.set(key, group)
    }
  }
  return { groups: [...groups.values()], deferred }
}

const newGroup = ({ orders, facts }: Memory, shopId: string, orderId: string): Group | null => {
  const base = orders.peek(shopId, orderId)
  const shop = facts.peek(shopId)
  if (!base || !shop) return null
  const written: Entry[] = []
  return {
    base,
    order: base,
    written,
    sides: [],
    messages: [],
    authorities: [],
    factsVersion: shop.version,
    opening: null,
    closed: false,
    members: [],
    entryById: (id) => orders.find(shopId, orderId, id) ?? written.find((entry) => entry.id === id),
  }
}

const place = ({ orders, facts }: Memory, group: Group, waiting: Waiting): void => {
  const { task } = waiting
  const { draft, deps, authority, opening, sides, messages } = task
  const stored = orders.find(deps.shopId, draft.orderId, draft.id)
  const twin = group.written.find(({ id }) => id === draft.id)
  const shop = facts.peek(deps.shopId)
  if (stored) waiting.resolve(knownOrReused(stored, task))
  else if (twin) group.members.push({ waiting, outcome: knownOrReused(twin, task) })
  else if (!shop) waiting.resolve('prepare-again')
  else {
    const admission = admitTask(task, group.order, shop)
    if (admission.does === 'prepare-again') waiting.resolve('prepare-again')
    else if (admission.does === 'refuse') group.members.push({ waiting, outcome: admission.refusal })
    else {
      group.order = admission.order
      group.written.push(...admission.written)
      group.sides.push(...sides)
      group.messages.push(...messages)
      if (authority !== null) group.authorities.push(authority)
      group.opening = opening
      group.closed = waiting.alone || opening !== null
      group.members.push({ waiting, outcome: { admitted: true, known: false, entry: admission.entry } })
    }
  }
}

const knownOrReused = (entry: Entry, { draft }: Task): Appended =>
  isSameContent(entry, draft) ? { admitted: true, known: true, entry } : idReused
