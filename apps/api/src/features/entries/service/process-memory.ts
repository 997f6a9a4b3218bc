import type { Pool } from 'pg'
import { type KeptFacts, keepFacts } from './kept-facts.ts'
import { type KeptOrders, keepOrders } from './kept-orders.ts'
import { startWriter, type Turns, type Writer } from './start-writer.ts'
import { type Openings, takeOpeningsInTurn } from './take-turns.ts'

/** What one process keeps of one database, and its only writer to it. */
export type ProcessMemory = {
  readonly orders: KeptOrders
  readonly facts: KeptFacts
  readonly writer: Writer
  readonly openings: Openings
}

const memories = new WeakMap<Pool, ProcessMemory>()

/** The event loop's own turns: the next one comes after the sockets were read. */
const ownTurns: Turns = {
  next: (work) => void setImmediate(work),
  after: (milliseconds, work) => void setTimeout(work, milliseconds),
}

/** The memory that belongs to a pool of connections, made at its first use. */
export const memoryOf = (pool: Pool): ProcessMemory => memories.get(pool) ?? startMemory(pool, ownTurns)

/** Makes the memory of a pool, empty. */
export const startMemory = (pool: Pool, turns: Turns): ProcessMemory => {
  const orders = keepOrders(pool)
  const facts = keepFacts(pool)
  const made = {
    orders,
    facts,
    writer: startWriter({ pool, orders, facts, turns }),
    openings: takeOpeningsInTurn(),
  }
  memories.set(pool, made)
  return made
}
