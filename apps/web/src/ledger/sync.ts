import { type Gained, type OrderReply, withGained } from './order.ts'

/** Where a device keeps what it read of orders, and how it reads more. */
export type SyncWorld = {
  readonly held: (orderId: string) => OrderReply | undefined
  /** Rejects where no answer comes. */
  readonly readGained: (orderId: string, afterSeq: number) => Promise<Gained>
  /** Puts what `change` makes of the held order in its place, in one step. */
  readonly change: (orderId: string, change: (held: OrderReply) => OrderReply) => void
  /** Has the order read whole: it is not held, or what is held does not join what was gained. */
  readonly readWhole: (orderId: string) => Promise<void>
}

/**
 * What is known of what others wrote to an order. `heard`: the server has just answered, and what was gained is joined.
 * `alone`: it does not answer, and no other tablet holds the order. `unheard`: it does not answer, and another may.
 */
export type Standing = 'heard' | 'alone' | 'unheard'

/** Hears the server first, before something that what others wrote may forbid. */
export const hearFirst = async (world: SyncWorld, orderId: string): Promise<Standing> => {
  const held = world.held(orderId)
  if (held === undefined) return 'unheard'
  try {
    join(world, held, withGained(held, await world.readGained(orderId, held.head.seq)))
    return 'heard'
  } catch {
    // Another reading may have brought in the meantime that a second tablet has it.
    return world.held(orderId)?.heldAlone ? 'alone' : 'unheard'
  }
}

/** Puts the joined order in its place; gives back whether it gained entries. */
const join = (world: SyncWorld, held: OrderReply, merged: OrderReply | null): boolean => {
  if (merged === null) return false
  const gained = merged.head.seq > held.head.seq
  if (!gained && merged.heldAlone === held.heldAlone) return false
  // What another reading brought in the meantime may be newer than this one.
  world.change(held.orderId, (now) =>
    now.head.seq < merged.head.seq ? merged : { ...now, heldAlone: merged.heldAlone },
  )
  return gained
}

/**
 * Reads what an order gained after the last entry that is held here, and adds it; gives back whether it gained anything.
 * Where that is not possible (a gap, a failed call, an order that is not held), the order is to be read whole.
 */
export const catchUp = async (world: SyncWorld, orderId: string): Promise<boolean> => {
  const held = world.held(orderId)
  const merged = held
    ? await world.readGained(orderId, held.head.seq).then(
        (gained) => withGained(held, gained),
        () => null,
      )
    : null
  if (held === undefined || merged === null) {
    await world.readWhole(orderId)
    return false
  }
  return join(world, held, merged)
}
